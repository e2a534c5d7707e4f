import { expect, test } from 'vitest';
import { go, parsePageMessage } from '../../sw/messages.ts';

test('what the page sends is understood', () => {
  expect(parsePageMessage(structuredClone(go))).toEqual(go);
});

test.each([undefined, null, 'go', 7, {}, { kind: 'stop' }, ['go']])('%j means nothing', (data) => {
  expect(parsePageMessage(data)).toBeUndefined();
});
