import { expect, it } from 'vitest';
import { driftSays } from '../../src/views/drift-says.ts';
import { aMould, aShelf, day } from '../support/builders.ts';

const drift = { since: day('2025-05-20'), waxes: 45, rejects: 9, sign: 3.8 };
const runs = [{ on: day('2025-06-10'), good: 12, rejects: 3 }];
const { gradeOn: _, ...unseen } = aMould({ good: 226, rejects: 19, byFault: { bubbles: 2, 'short fill': 9 }, grade: 'sound' });

it('is said after a run with what to try first, and only while the rejects rise', () => {
  const drifting = { ...unseen, runs, drift };
  const says = (mould: typeof drifting | typeof unseen) => driftSays(aShelf([mould]), mould.id, day('2025-06-10'));
  expect(says(drifting)).toBe(' Its rejects are rising. For short fill, try the wax temperature first.');
  expect(says({ ...drifting, drift: { ...drift, sign: 1 } })).toBe('');
  expect(says(unseen)).toBe('');
  expect(driftSays(aShelf([]), drifting.id, day('2025-06-10'))).toBe('');
});
