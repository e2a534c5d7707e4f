import { describe, expect, it } from 'vitest';
import { ENTRY_KINDS, type Entry } from '../../src/domain/entry.ts';
import { FIELDS } from '../../src/domain/fields.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { idAt } from '../support/builders.ts';
import { aFailed, aJournal, anInjected, aRecorded, aWithdrawn, SOME } from '../support/entry-builders.ts';

const journal = aJournal();
const oneOfEach = ENTRY_KINDS.map((kind) => journal.find((entry) => entry.kind === kind) as Entry);

function refusal(raw: unknown): string {
  const answer = parseEntry(raw);
  return isProblem(answer) ? answer.says : 'taken';
}

describe('an entry', () => {
  it('of every kind and noun is read as it was written', () => {
    for (const entry of journal) expect(parseEntry(JSON.parse(JSON.stringify(entry)))).toStrictEqual(entry);
    expect(new Set(journal.map((entry) => entry.kind)).size).toBe(ENTRY_KINDS.length);
    expect(new Set(journal.flatMap((entry) => (entry.kind === 'recorded' ? [entry.noun] : []))).size).toBe(NOUNS.length);
  });

  it.each(oneOfEach)('$kind is refused with an unknown field, without a day, with another kind, or a field of the wrong sort', (entry) => {
    expect(refusal({ ...entry, colour: 'red' })).toMatch(/colour.* not a field known here/);
    expect(refusal({ ...entry, problem: true })).toMatch(/not a field known here/);
    expect(refusal(JSON.parse(`{"__proto__":{"note":"x"},${JSON.stringify(entry).slice(1)}`))).toMatch(
      /__proto__.* not a field known here/,
    );
    const { on: _, ...timeless } = entry;
    expect(refusal(timeless)).toMatch(/on is missing/);
    expect(refusal({ ...entry, on: '2023-02-29' })).toMatch(/not a day that exists/);
    expect(refusal({ ...entry, kind: 'toString' })).toMatch(/no entry of the kind/);
    for (const [field, value] of Object.entries(entry)) {
      if (field !== 'kind' && field !== 'noun') expect(refusal({ ...entry, [field]: { wrong: value } }), field).not.toBe('taken');
      expect(refusal({ ...entry, [field]: Number.NaN }), field).not.toBe('taken');
      expect(refusal({ ...entry, [field]: 1e300 }), field).not.toBe('taken');
    }
  });

  it.each([
    null,
    undefined,
    7,
    'moved',
    [],
    {},
    { kind: '__proto__' },
    { kind: 'recorded' },
    { kind: 'recorded', noun: 'constructor' },
    { kind: { toString: 1, valueOf: 1 } },
  ])('is not %j', (raw) => {
    expect(refusal(raw)).not.toBe('taken');
  });

  it('is refused when a number is out of range, a list too long, or a fault unknown', () => {
    const run = anInjected();
    expect(refusal({ ...run, shots: 0 })).toMatch(/shots/);
    expect(refusal({ ...run, good: -1 })).toMatch(/good/);
    expect(refusal({ ...run, good: 1.5 })).toMatch(/good/);
    expect(refusal({ ...run, waxC: 900 })).toMatch(/waxC/);
    expect(refusal({ ...run, rejects: { witchcraft: 1 } })).toMatch(/witchcraft/);
    expect(refusal({ ...run, rejects: { flash: 0 } })).toMatch(/rejects/);
    expect(refusal({ ...run, pictures: ['../../etc'] })).toMatch(/picture/);
    expect(refusal({ ...aFailed(), faults: Array.from({ length: 21 }, () => 'flash') })).toMatch(/21 lines/);
    expect(refusal({ ...aFailed(), note: 'x'.repeat(4001) })).toMatch(/4001 characters/);
  });

  it('is refused when it comes before what it takes back, or before its own action', () => {
    const late = aFailed({ id: idAt(9000) });
    expect(refusal(aWithdrawn(late, { id: idAt(8999) }))).toMatch(/not older/);
    expect(refusal(aWithdrawn(late, { id: late.id }))).toMatch(/not older/);
    expect(refusal(aWithdrawn(late, { id: idAt(9001) }))).toBe('taken');
    expect(refusal({ ...late, step: late.id })).toMatch(/after itself/);
    expect(refusal({ ...late, step: idAt(8999) })).toBe('taken');
  });

  it('is refused when it puts a place inside itself', () => {
    const place = aRecorded('place', { name: 'Box' });
    const inside = /inside itself/;
    expect(refusal({ ...place, at: place.id })).toMatch(inside);
    expect(refusal({ ...place, fields: { in: place.id } })).toMatch(inside);
    const common = { id: idAt(9000), on: '2024-03-05' };
    expect(refusal({ ...common, kind: 'corrected', noun: 'place', of: place.id, fields: { in: place.id } })).toMatch(inside);
    expect(refusal({ ...common, kind: 'moved', things: [SOME.mould, place.id], to: place.id })).toMatch(inside);
    expect(refusal({ ...common, kind: 'moved', things: [place.id], to: SOME.place })).toBe('taken');
  });

  it('of a thing has fields that the shelf uses for nothing else', () => {
    const kept = ['id', 'noun', 'since', 'at', 'atSince', 'usual', 'until', 'pictures', 'retired', 'aside', 'measured'];
    const tallies = { mould: ['shots', 'good', 'rejects', 'byFault', 'runs', 'sound', 'scrap'], wax: ['grams', 'used', 'weighedOn'] };
    const graded = ['grade', 'gradeOn', 'gradeNote', 'faults', 'nextLook'];
    const all = {
      ...tallies,
      master: [],
      casting: ['pieces', 'countedOn', 'scrap', 'issued'],
      injectedWax: ['pieces', 'countedOn'],
      flask: ['invested'],
    };
    for (const noun of NOUNS) {
      const more: readonly string[] = noun in all ? all[noun as keyof typeof all] : [];
      for (const name of [...kept, ...graded, ...more]) expect(Object.keys(FIELDS[noun]), noun).not.toContain(name);
    }
  });
});
