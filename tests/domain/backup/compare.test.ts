import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Comparison, type Difference } from '../../../src/domain/backup/compare.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { foldAll } from '../../../src/domain/fold.ts';
import { NOUNS } from '../../../src/domain/noun.ts';
import { through } from '../../../src/domain/slices.ts';
import { aCorrected, aMoved, aRecorded } from '../../support/entry-builders.ts';
import { histories } from '../../support/histories.ts';

function compared(mine: readonly Entry[], theirs: readonly Entry[], at = mine.length): Difference {
  const comparison = through(Comparison.with(theirs));
  comparison.take(mine.slice(0, at));
  comparison.take(mine.slice(at));
  const shelf = foldAll(theirs);
  return through(
    comparison.done(
      foldAll(mine),
      NOUNS.map((noun) => [noun, [...shelf.things[noun].keys()]] as const),
    ),
  );
}

describe('two studios beside each other', () => {
  it('come apart into what is only there, only here and in both, wherever the journal is cut', () => {
    fc.assert(
      fc.property(histories(40), fc.nat(), fc.nat(), fc.nat(), (all, a, b, cut) => {
        const [from, to] = [a % (all.length + 1), b % (all.length + 1)].sort((x, y) => x - y) as [number, number];
        const [mine, theirs] = [all.slice(0, to), all.slice(from)];
        const { entries } = compared(mine, theirs, cut % (mine.length + 1));
        expect(entries).toEqual({ fresh: all.length - to, onlyHere: from, same: to - from, otherwise: 0 });
      }),
    );
  });

  it('name the nouns that differ, and the things that something was said about on both sides', () => {
    const mould = aRecorded('mould', { name: 'Heron' });
    const other = aRecorded('mould', { name: 'Crane' });
    const shared = [mould, other];
    const known = { id: mould.id, noun: 'mould' } as const;
    const mine = [
      ...shared,
      aCorrected(known, { name: 'Grey heron' }),
      aRecorded('wax', {}),
      aCorrected({ id: other.id, noun: 'mould' }, {}),
    ];
    const theirs = [...shared, aMoved({ things: [mould.id as never] }), aRecorded('place', {}), aRecorded('place', {})];
    expect(compared(mine, theirs)).toMatchObject({
      things: [
        { noun: 'place', fresh: 2, onlyHere: 0 },
        { noun: 'wax', fresh: 0, onlyHere: 1 },
      ],
      bothChanged: 1,
    });
    expect(compared([], [])).toEqual({ entries: { fresh: 0, onlyHere: 0, same: 0, otherwise: 0 }, things: [], bothChanged: 0 });
  });

  it('tell when the same entry says something else there, but not when only its fields come in another order', () => {
    const mould = aRecorded('mould', { name: 'Heron', size: 'large' });
    const { fields, ...rest } = mould;
    expect(compared([mould], [{ fields: { size: fields.size, name: fields.name }, ...rest } as never]).entries.otherwise).toBe(0);
    expect(compared([mould], [{ ...mould, fields: { name: 'Crane' } } as never]).entries).toEqual({
      fresh: 0,
      onlyHere: 0,
      same: 0,
      otherwise: 1,
    });
  });
});
