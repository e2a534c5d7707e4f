import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EntryId } from '../../src/domain/brand.ts';
import { ENTRY_KINDS, type Entry, type EntryOf } from '../../src/domain/entry.ts';
import { foldAll, foldOn, inForce, inOrder } from '../../src/domain/fold.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { contentsOf, EMPTY_SHELF } from '../../src/domain/shelf.ts';
import { histories, idAfter } from '../support/histories.ts';
import { plainShelf, plainSum } from '../support/plain-shelf.ts';

fc.configureGlobal({ numRuns: 50 });

/** A journal, and for each of its entries which of two halves it falls into. */
const halves = histories().chain((journal) => fc.tuple(fc.constant(journal), fc.array(fc.boolean(), { minLength: 60, maxLength: 60 })));

function takingBack(entry: { readonly id: EntryId }, journal: readonly Entry[]): EntryOf<'withdrawn'> {
  return { kind: 'withdrawn', id: idAfter(journal), on: '2025-01-31' as Entry['on'], entry: entry.id };
}

function actionOf(first: Entry, journal: readonly Entry[]): Set<Entry> {
  return new Set(journal.filter((entry) => entry === first || entry.step === first.id));
}

describe('random histories', { timeout: 30_000 }, () => {
  it('hold every kind and noun, actions of several steps, and takings-back of takings-back', () => {
    const all = fc.sample(histories(), { numRuns: 300, seed: 11 }).flat();
    const byId = new Map(all.map((entry) => [entry.id, entry]));
    expect(new Set(all.map((entry) => entry.kind))).toEqual(new Set(ENTRY_KINDS));
    expect(new Set(all.flatMap((entry) => (entry.kind === 'recorded' ? [entry.noun] : [])))).toEqual(new Set(NOUNS));
    const takings = all.filter((entry) => entry.kind === 'withdrawn');
    const takenKinds = new Set(takings.map((taking) => byId.get(taking.entry)?.kind));
    for (const kind of ENTRY_KINDS) expect(takenKinds).toContain(kind);
    expect(all.filter((entry) => entry.step).length).toBeGreaterThan(50);
  });

  it('read back from JSON as they were', () => {
    fc.assert(
      fc.property(histories(), (journal) => {
        for (const entry of journal) expect(parseEntry(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
      }),
    );
  });
});

describe('the fold', () => {
  it('gives the same shelf whatever the order and however often an entry comes', () => {
    const shuffled = histories().chain((journal) =>
      fc.tuple(fc.constant(journal), fc.shuffledSubarray([...journal, ...journal], { minLength: journal.length })),
    );
    fc.assert(
      fc.property(shuffled, ([journal, again]) => {
        expect(plainShelf(foldAll([...again, ...[...journal].reverse()]))).toEqual(plainShelf(foldAll(journal)));
      }),
    );
  });

  it('joins journals by union: commutative, associative, idempotent', () => {
    fc.assert(
      fc.property(halves, ([journal, isLeft]) => {
        const a = journal.filter((_, i) => isLeft[i]);
        const b = journal.filter((_, i) => !isLeft[i] || i % 3 === 0);
        const c = journal.filter((_, i) => i % 2 === 0);
        expect(inOrder([...a, ...b])).toEqual(inOrder([...b, ...a]));
        expect(inOrder([...inOrder([...a, ...b]), ...c])).toEqual(inOrder([...a, ...inOrder([...b, ...c])]));
        expect(inOrder([...a, ...a])).toEqual(inOrder(a));
        expect(plainShelf(foldAll([...a, ...b]))).toEqual(plainShelf(foldAll(journal)));
      }),
    );
  });

  it('comes to the same by going on from a shelf, or says that it cannot', () => {
    let told = 0;
    let refused = 0;
    fc.assert(
      fc.property(halves, fc.nat({ max: 60 }), (halved, cut) => {
        const [journal, isLeft] = halved;
        const ordered = inOrder(journal);
        const parts = [
          [ordered.slice(0, cut), ordered.slice(cut)],
          [journal.filter((_, i) => isLeft[i]), journal.filter((_, i) => !isLeft[i])],
        ] as const;
        for (const [a, b] of parts) {
          const base = foldOn(EMPTY_SHELF, a);
          if (!base) throw new Error('an empty shelf can always be gone on from');
          const before = plainShelf(base);
          const next = foldOn(base, b);
          if (next) expect(plainShelf(next)).toEqual(plainShelf(foldAll([...a, ...b])));
          if (next) told += 1;
          else refused += 1;
          expect(plainShelf(base)).toEqual(before);
        }
      }),
    );
    expect(told).toBeGreaterThan(20);
    expect(refused).toBeGreaterThan(20);
  });

  it('takes back any action whole, and brings it back when the taking-back is taken back', () => {
    const taken = new Set<string>();
    fc.assert(
      fc.property(histories(), fc.nat(), (journal, pick) => {
        const firsts = journal.filter((entry) => !entry.step);
        for (const kind of ENTRY_KINDS) {
          const alike = firsts.filter((entry) => entry.kind === kind);
          const first = alike[pick % Math.max(1, alike.length)];
          if (!first) continue;
          taken.add(kind);
          const action = actionOf(first, journal);
          const undo = takingBack(first, journal);
          const without = foldAll(journal.filter((entry) => !action.has(entry)));
          expect(plainSum(foldAll([...journal, undo]))).toEqual(plainSum(without));
          const redo = takingBack(undo, [...journal, undo]);
          expect(plainSum(foldAll([...journal, undo, redo]))).toEqual(plainSum(foldAll(journal)));
        }
      }),
      { numRuns: 60, seed: 5 },
    );
    expect(taken).toEqual(new Set(ENTRY_KINDS));
  });

  it('takes back one step alone when it is the step that is named', () => {
    fc.assert(
      fc.property(histories(40), (journal) => {
        for (const step of journal.filter((entry) => entry.step)) {
          const without = foldAll(journal.filter((entry) => entry !== step));
          expect(plainSum(foldAll([...journal, takingBack(step, journal)]))).toEqual(plainSum(without));
        }
      }),
    );
  });

  it('keeps an index of contents that says what the things say', () => {
    fc.assert(
      fc.property(halves, ([journal, isLeft]) => {
        const shelf = foldAll(journal);
        expect(shelf.contents).toEqual(contentsOf(shelf.things));
        const ordered = inOrder(journal);
        const cut = isLeft.filter(Boolean).length;
        const later = foldOn(foldAll(ordered.slice(0, cut)), ordered.slice(cut));
        if (later) expect(later.contents).toEqual(contentsOf(later.things));
      }),
    );
  });

  it('counts the entries in force', () => {
    fc.assert(fc.property(histories(), (journal) => foldAll(journal).entries === inForce(inOrder(journal)).length));
  });
});

describe('fields: the last writer wins', { timeout: 30_000 }, () => {
  /** Slow and obvious: for each field of each thing, the newest entry in force that says something about it. */
  function twin(journal: readonly Entry[]): Map<string, Record<string, unknown>> {
    const things = new Map<string, Record<string, unknown>>();
    const counting = inForce(inOrder(journal));
    for (const recorded of counting) {
      if (recorded.kind !== 'recorded') continue;
      const writers = counting.filter(
        (entry) =>
          entry === recorded || (entry.kind === 'corrected' && entry.noun === recorded.noun && (entry.of as string) === recorded.id),
      ) as (EntryOf<'recorded'> | EntryOf<'corrected'>)[];
      const fields: Record<string, unknown> = {};
      for (const field of new Set(writers.flatMap((entry) => Object.keys(entry.fields)))) {
        const newest = writers.filter((entry) => Object.hasOwn(entry.fields, field)).reduce((a, b) => (a.id > b.id ? a : b));
        const value = (newest.fields as Record<string, unknown>)[field];
        if (value !== null) fields[field] = value;
      }
      things.set(recorded.id, fields);
    }
    return things;
  }

  it('as a slow twin has it', () => {
    fc.assert(
      fc.property(histories(), (journal) => {
        const shelf = foldAll(journal);
        for (const [id, fields] of twin(journal)) {
          const thing = NOUNS.map((noun) => (shelf.things[noun] as ReadonlyMap<string, object>).get(id)).find(Boolean);
          expect(thing).toMatchObject(fields);
        }
      }),
    );
  });
});
