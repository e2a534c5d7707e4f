import { describe, expect, it } from 'vitest';
import { foldOn } from '../../../src/domain/fold.ts';
import { planAllowances } from '../../../src/domain/plans/allowances.ts';
import { planCorrect } from '../../../src/domain/plans/correct.ts';
import { planLookedAt, planMarkDoubtful } from '../../../src/domain/plans/mark-doubtful.ts';
import { planMeasure } from '../../../src/domain/plans/measure.ts';
import { planRecord } from '../../../src/domain/plans/record.ts';
import { attentionOf } from '../../../src/views/attention.ts';
import { aCasting, aDesk, aMaster, aMould, anInjectedWax, aShelf, START_DAY } from '../../support/builders.ts';

const original = aMaster({ kind: 'original', name: 'The original', lengthMm: 22 as never });
const mould = aMould({ master: original.id, name: 'Mould 1' });
const pile = anInjectedWax({ mould: mould.id, pieces: 3, name: 'Raw pile' });
const dressed = aMaster({ kind: 'dressed wax', from: [pile.id], name: 'Dressed', lengthMm: 21 as never });
const second = aMould({ master: dressed.id, name: 'Mould 2' });
const casting = aCasting({ mould: second.id, name: 'Bronzes' });
const shelf = aShelf([original, mould, pile, dressed, second, casting]);
const after = (entries: unknown) => foldOn(shelf, entries as never) as typeof shelf;

describe('a loop', () => {
  it('is refused, beside the field that would close it', () => {
    const loops = [
      { of: original.id, fields: { from: [casting.id] } },
      { of: mould.id, fields: { master: dressed.id } },
      { of: mould.id, fields: { masters: [original.id, dressed.id] } },
      { of: pile.id, fields: { mould: second.id } },
      { of: dressed.id, fields: { from: [dressed.id] } },
    ];
    for (const loop of loops) {
      const field = Object.keys(loop.fields)[0] as string;
      expect(planCorrect(shelf, aDesk(), loop as never), field).toMatchObject({
        problem: true,
        fields: { [field]: expect.stringMatching(/come/) },
      });
    }
    expect(planCorrect(shelf, aDesk(), { of: dressed.id, fields: { from: [mould.id] } })).toHaveLength(1);
  });
});

describe('a wax or casting kept as a master', () => {
  it('is one action: the master, and one piece off its pile', () => {
    const entries = planRecord(shelf, aDesk(), {
      noun: 'master',
      fields: { name: 'Kept', kind: 'dressed wax', from: [pile.id] },
      off: pile.id,
    });
    expect(entries).toMatchObject([
      { kind: 'recorded', fields: { from: [pile.id] } },
      { kind: 'issued', of: pile.id, pieces: 1, reason: 'kept as master', step: (entries as readonly { id: string }[])[0]?.id },
    ]);
    expect(after(entries).things.injectedWax.get(pile.id)?.pieces).toBe(2);
  });

  it('is asked about when the pile is empty on record', () => {
    const command = { noun: 'master', fields: { name: 'Four', from: [pile.id] }, off: pile.id, count: 4 } as const;
    expect(planRecord(shelf, aDesk(), command)).toMatchObject({ warnings: ['There are 3 of Raw pile on record.'] });
    expect(planRecord(shelf, aDesk(), { ...command, confirmed: true })).toHaveLength(5);
    expect(planRecord(shelf, aDesk(), { ...command, off: mould.id as never })).toMatchObject({ problem: true });
  });
});

describe('measuring', () => {
  const sizes = (mm: number, name = 'length') => [{ name, mm }] as never;
  it('writes readings down and keeps those of other dimensions', () => {
    const first = planMeasure(shelf, aDesk(), { of: casting.id, sizes: sizes(20.1), grams: 8 as never });
    expect(first).toMatchObject([{ kind: 'measured', sizes: [{ name: 'length', mm: 20.1 }], grams: 8 }]);
    const once = after(first);
    const again = planMeasure(once, aDesk({ nowMs: 1_900_000_000_000 }), { of: casting.id, sizes: sizes(4.2, 'band') });
    expect(foldOn(once, again as never)?.things.casting.get(casting.id)?.measured).toEqual({
      on: START_DAY,
      sizes: [
        { name: 'length', mm: 20.1 },
        { name: 'band', mm: 4.2 },
      ],
      grams: 8,
    });
  });

  it('asks about a piece larger than what it came from, from either side, and refuses neither', () => {
    const larger = planMeasure(shelf, aDesk(), { of: casting.id, sizes: sizes(21.4) });
    expect(larger).toMatchObject({ warnings: [expect.stringContaining('21.4 mm is more than the 21 mm of Dressed')] });
    expect(planMeasure(shelf, aDesk(), { of: casting.id, sizes: sizes(21.4), confirmed: true })).toHaveLength(1);
    expect(planMeasure(shelf, aDesk(), { of: original.id, sizes: sizes(20.5) })).toMatchObject({
      warnings: [expect.stringContaining('20.5 mm is less than the 21 mm of Dressed')],
    });
  });

  it('says what is missing or twice', () => {
    expect(planMeasure(shelf, aDesk(), { of: casting.id, sizes: [] })).toMatchObject({ fields: { sizes: expect.any(String) } });
    const twice = [...(sizes(20) as never[]), ...(sizes(19, 'Length') as never[])];
    expect(planMeasure(shelf, aDesk(), { of: casting.id, sizes: twice })).toMatchObject({
      fields: { sizes: expect.stringContaining('twice') },
    });
    expect(planMeasure(shelf, aDesk(), { of: casting.id, sizes: sizes(0) })).toMatchObject({ problem: true });
  });
});

describe('marking for a look', () => {
  it('is one action over waxes, castings and flasks; it shows in To do until somebody looked', () => {
    const entries = planMarkDoubtful(shelf, aDesk(), {
      mould: mould.id,
      things: [
        { id: pile.id, least: 1, most: 3 },
        { id: casting.id, least: 0, most: 26 },
        { id: original.id, least: 1, most: 1 },
      ],
    }) as readonly { id: string; step?: string }[];
    expect(entries.map(({ step }) => step)).toEqual([undefined, entries[0]?.id]);
    const marked = after(entries);
    const flags = attentionOf(marked, START_DAY).flags.filter(({ kind }) => kind === 'doubtful');
    expect(flags.map(({ says }) => says)).toEqual([
      'Marked on 5 March 2024: 1 to 3 of 3 came from a mould when it may have been failing.',
      'Marked on 5 March 2024: up to 26 of 26 came from a mould when it may have been failing.',
    ]);
    const looked = planLookedAt(marked, aDesk({ nowMs: 1_900_000_000_000 }), { of: pile.id });
    const clear = foldOn(marked, looked as never) as typeof shelf;
    expect(attentionOf(clear, START_DAY).flags.filter(({ kind }) => kind === 'doubtful')).toHaveLength(1);
    expect(planLookedAt(clear, aDesk(), { of: pile.id })).toEqual([]);
    expect(planMarkDoubtful(shelf, aDesk(), { mould: mould.id, things: [] })).toMatchObject({ problem: true });
  });
});

describe('allowances', () => {
  it('are written where they differ, merge step by step, and go back to the default when emptied', () => {
    const first = planAllowances(shelf, aDesk(), {
      allowance: { wax: { percent: 1.8, spread: 0.8 }, pewter: { percent: 1.43, spread: 0.3 } },
    });
    expect(first).toMatchObject([{ noun: 'studio', fields: { allowance: { wax: { percent: 1.8 } } } }]);
    const once = after(first);
    const second = planAllowances(once, aDesk({ nowMs: 1_900_000_000_000 }), { allowance: { bronze: { percent: 1.2 } } });
    const twice = foldOn(once, second as never) as typeof shelf;
    expect(twice.studio.allowance).toEqual({ wax: { percent: 1.8 }, bronze: { percent: 1.2 } });
    const third = planAllowances(twice, aDesk({ nowMs: 2_000_000_000_000 }), { allowance: { wax: {} } });
    expect(foldOn(twice, third as never)?.studio.allowance).toEqual({ wax: {}, bronze: { percent: 1.2 } });
    expect(planAllowances(shelf, aDesk(), { allowance: { wax: { percent: 90 } } })).toMatchObject({
      fields: { 'wax percent': expect.any(String) },
    });
  });
});
