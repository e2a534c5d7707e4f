import { expect, it } from 'vitest';
import { planGiveCodes, planMarkLabelled } from '../../../src/domain/plans/label-things.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { labelledIn, labelsFor, neverLabelled } from '../../../src/views/label-sheet.ts';
import { aDesign, aDesk, aMould, aPeriod, aPlace, aShelf, aWax, codeOf, START_DAY } from '../../support/builders.ts';

const drawer = aPlace({ code: codeOf('place', 3) });
const bare = aMould({ name: 'No code', at: drawer.id });
const coded = aMould({ name: 'Coded', code: codeOf('mould', 5), at: drawer.id, labelled: START_DAY });
const period = aPeriod();
const retired = aWax({ retired: { on: START_DAY, reason: 'used up' as never } });
const shelf = aShelf([drawer, bare, coded, period, retired]);

it('gives a code to each that has none, and to nothing that carries no label', () => {
  const entries = planGiveCodes(shelf, aDesk(), [bare.id, coded.id, period.id]);
  if (isProblem(entries)) throw new Error(entries.says);
  expect(entries).toHaveLength(1);
  expect(entries[0]).toMatchObject({ kind: 'corrected', noun: 'mould', of: bare.id, fields: { code: expect.stringMatching(/^M.{7}$/) } });
});

it('writes down once a day that labels were put on, as one action', () => {
  const entries = planMarkLabelled(shelf, aDesk(), [bare.id, coded.id, drawer.id]);
  if (isProblem(entries)) throw new Error(entries.says);
  expect(entries.map((entry) => 'of' in entry && entry.of)).toEqual([bare.id, drawer.id]);
  expect(entries[1]?.step).toBe(entries[0]?.id);
});

it('knows what never had a label, and what stands in a place', () => {
  expect(neverLabelled(shelf)).toEqual([
    { noun: 'place', ids: [drawer.id] },
    { noun: 'mould', ids: [bare.id] },
  ]);
  expect(labelledIn(shelf, drawer.id)).toEqual([bare.id, coded.id]);
  const labels = labelsFor(shelf, [bare.id, coded.id, period.id, 'gone']);
  expect(labels.map(({ words, payload }) => [words.name, payload])).toEqual([
    ['No code', ''],
    ['Coded', codeOf('mould', 5)],
  ]);
});

it('prints the design below a name that does not say it', () => {
  const omega = aDesign({ name: 'Omega brooch' });
  const [numbered, named] = [
    aMould({ name: 'M-002', design: omega.id, size: 'large' }),
    aMould({ name: 'Omega brooch 3', design: omega.id, size: 'large' }),
  ];
  const labels = labelsFor(aShelf([omega, numbered, named]), [numbered.id, named.id]);
  expect(labels.map(({ words }) => [words.name, words.lines])).toEqual([
    ['M-002', ['Omega brooch', 'large']],
    ['Omega brooch 3', ['large']],
  ]);
});
