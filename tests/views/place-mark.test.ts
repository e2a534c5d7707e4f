import { expect, test } from 'vitest';
import { together } from '../../src/views/place-mark.ts';

test('a kind is counted once, at its most pressing, and the worst comes first', () => {
  const [worn, due] = [{ kind: 'worn', level: 'note', count: 3 } as const, { kind: 'look due', level: 'soon', count: 2 } as const];
  expect(together([])).toEqual([]);
  expect(together([[worn, due], [{ ...worn, level: 'act', count: 1 }], [worn]])).toEqual([
    { kind: 'worn', level: 'act', count: 7 },
    { kind: 'look due', level: 'soon', count: 2 },
  ]);
  expect(together([[{ ...due, level: 'act', count: 1 }, due]])).toEqual([{ kind: 'look due', level: 'act', count: 3 }]);
});
