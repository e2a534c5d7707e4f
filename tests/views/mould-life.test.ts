import { describe, expect, it } from 'vitest';
import { sayNumber } from '../../src/domain/measure-words.ts';
import type { Thing } from '../../src/domain/shelf.ts';
import { sumLives } from '../../src/domain/survival/life-sums.ts';
import { livesByRubber } from '../../src/domain/survival/rubber-lives.ts';
import { forecastOf, mouldLifeOf, sayChance, sayLeft } from '../../src/views/mould-life.ts';
import { remakeAsk, remakeList } from '../../src/views/remake-first.ts';
import { remakeOut } from '../../src/views/remake-out.ts';
import { survivalCards, survivalNames } from '../../src/views/survival-page.ts';
import { aDesign, aMaster, aMould, aPlace, aShelf, day } from '../support/builders.ts';

const design = aDesign({ keep: 0, name: 'Owl seal' });
const tin = {
  rubber: 'tin silicone',
  expectedShots: undefined,
  design: design.id,
  size: 'large',
  purpose: 'production',
  grade: 'sound',
  faults: [],
} as const;
const mould = (over: object) => ({ ...aMould(), ...tin, ...over }) as unknown as Thing<'mould'>;
const ended = mould({ shots: 70, retired: { on: day('2024-05-06'), reason: 'torn' } });
const young = mould({ shots: 12, good: 9, rejects: 3, byFault: { flash: 2, sink: 1 } });
const shelf = aShelf([design, ended, young, mould({ shots: 45 }), mould({ shots: 0 })]);

describe('what the page of a mould says of its life', () => {
  it('names what every figure rests on', () => {
    expect(mouldLifeOf(shelf, young.id, false)?.restsOn).toBe(
      'From 3 moulds of tin silicone, 2 still whole, and about 80 shots expected (a figure from memory).',
    );
    expect(mouldLifeOf(shelf, ended.id, false)).toMatchObject({ isForecast: false, counts: expect.stringContaining('an end at 70 shots') });
    expect(mouldLifeOf(shelf, young.id, false)).toMatchObject({
      isForecast: true,
      counts: expect.stringContaining('still whole at 12 shots'),
    });
  });

  it('says what is missing for a forecast', () => {
    const unknown = mould({ rubber: undefined });
    expect(mouldLifeOf(aShelf([design, unknown]), unknown.id, false)).toMatchObject({
      isForecast: false,
      restsOn: expect.stringContaining('Say which rubber it is'),
    });
  });

  it('names the causes to try for its worst faults only while its rejects rise', () => {
    expect(mouldLifeOf(shelf, young.id, true)?.causes.map(({ fault }) => fault)).toEqual(['flash', 'sink']);
    expect(mouldLifeOf(shelf, young.id, true)?.trust).toBe('Of a mould that is as ever, this is said by chance in less than 1 run of 200.');
    const none = mouldLifeOf(shelf, young.id, false);
    expect(none).toMatchObject({ causes: [] });
    expect(none?.trust).toBeUndefined();
  });

  it('gives shots left with their spread, and never a certainty', () => {
    const lives = livesByRubber(shelf)[0];
    if (!lives) throw new Error('there are lives');
    const { left, chanceOf } = forecastOf(sumLives(lives).posterior, young.shots, 80);
    expect(left.low).toBeLessThan(left.middle);
    expect(chanceOf(1)).toBeGreaterThan(chanceOf(40));
    expect(sayLeft({ low: 8, middle: 123, high: 1234 })).toEqual({ middle: 'about 120', range: `8 to ${sayNumber(1200)}` });
    expect([sayChance(0.9995), sayChance(0.875), sayChance(0.001)]).toEqual(['more than 98 in 100', '88 in 100', 'less than 2 in 100']);
  });
});

describe('how long moulds last', () => {
  it('has a card for each rubber, with its median or why there is none', () => {
    const [name] = survivalNames(shelf);
    const lives = livesByRubber(shelf);
    expect(name).toBe('tin silicone');
    const sum = sumLives(lives[0] ?? { lives: [], expected: [] });
    const [card] = survivalCards(shelf, new Map([['tin silicone', { key: '', sum }]]));
    expect(card).toMatchObject({
      says: '3 moulds of tin silicone, 2 still whole',
      noFit: expect.stringContaining('no mould has come further'),
      table: [{ shots: 70, atRisk: 1, ends: 1, share: '0 %', range: '' }],
      facts: [{ name: 'Half of them make', says: '70 shots; the true figure is 70 or more with 95 %' }],
    });
    expect(card?.marks.map(({ atRisk }) => atRisk)).toEqual([3, 2, 2, 1, 1]);
  });
});

describe('which moulds to make again first', () => {
  const place = aPlace({ name: 'Tray 4', in: undefined } as object);
  const wanted = aDesign({ keep: 60, name: 'Crane toggle' });
  const spare = aDesign({ keep: 4, name: 'Bee brooch' });
  const of = (id: string, shots: number) => mould({ design: id, shots, good: shots, rejects: 0 });
  const master = { ...aMaster({ design: wanted.id, size: 'large', state: 'sound' }), at: place.id } as Thing;
  const studio = aShelf([place, wanted, spare, design, of(wanted.id, 60), of(spare.id, 5), master]);

  it('puts first what would be missed most, with when to start and where the master stands', () => {
    const ask = remakeAsk(studio);
    expect(ask.moulds).toHaveLength(2);
    const forecasts = ask.moulds.map(({ shots }) => ({ left: { low: 2, middle: 9, high: 30 }, chance: shots === 60 ? 0.1 : 0.95 }));
    const { items, safe } = remakeList(studio, ask, forecasts, day('2024-05-06'));
    const listed = { id: ask.kinds[0]?.moulds[0]?.id as never, title: 'Listed', detail: '' };
    const taken = remakeOut({ items, safe }, [listed, { id: spare.id as never, title: 'Alone', detail: '3 shots' }]);
    expect(
      taken.rows.map(([title, missed, wanted, chance, start, , , , isLast]) => [title, missed, wanted, chance, start, isLast]),
    ).toEqual([
      ...items.map(({ title, missed, wanted, chance, start }) => [title, missed.toFixed(1), wanted, chance, start, '']),
      ['Alone', '', '', '', '', 'yes'],
    ]);
    expect(taken.rows.every((row) => row.length === taken.headings.length)).toBe(true);
    expect(safe).toBe(1);
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({
      title: 'Crane toggle, large',
      missed: 54,
      wanted: '60 pieces missing: 60 to keep on hand.',
      chance: 'The chance that its mould gives out before they are made is 90 in 100.',
      start: 'No date is set; it takes about 7 days from rubber to castings.',
      source: { isSound: true, place: { path: 'Tray 4' } },
      isLast: false,
    });
  });

  it('marks the last of its kind, and says that there is no master', () => {
    const { master: _, ...orphan } = of(wanted.id, 60);
    const alone = aShelf([wanted, orphan as Thing]);
    const ask = remakeAsk(alone);
    const { items } = remakeList(alone, ask, [{ left: { low: 2, middle: 9, high: 30 }, chance: 0.1 }], day('2024-05-06'));
    expect(items[0]).toMatchObject({ isLast: true, source: { isSound: false, says: expect.stringContaining('There is no master') } });
  });
});
