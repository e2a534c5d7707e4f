import { describe, expect, it } from 'vitest';
import type { Mould } from '../../src/domain/shelf.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { kinSummary } from '../../src/views/lineage-page.ts';
import { runFormOf } from '../../src/views/run-form.ts';
import { readingLines, sizesFor } from '../../src/views/size-page.ts';
import { tracePageOf } from '../../src/views/trace-page.ts';
import { typedReading, typedRing, whichSize } from '../../src/views/which-size.ts';
import { idOf, shelfOf } from '../support/shelf-of.ts';

const sizes = [
  { label: 'small', mm: 20 },
  { label: 'large', mm: 21 },
];
const shelf = shelfOf([
  { noun: 'place', is: 'drawer', name: 'Drawer B2', kind: 'drawer' },
  { noun: 'design', is: 'owl', name: 'Owl', metals: ['bronze'], sizes },
  { noun: 'master', is: 'original', kind: 'original', name: 'The original', lengthMm: 21.4 },
  {
    noun: 'mould',
    is: 'mould',
    master: idOf('original'),
    rubber: 'vulcanised silicone',
    design: idOf('owl'),
    size: 'large',
    name: 'Mould 1',
  },
  { noun: 'injectedWax', is: 'waxes', mould: idOf('mould'), name: 'Tray of owls', at: 'drawer', pieces: 9, state: 'raw' },
  {
    noun: 'casting',
    is: 'bronzes',
    mould: idOf('mould'),
    name: 'Bronze owls',
    metal: 'bronze',
    pieces: 4,
    measured: {
      on: '2024-03-07',
      sizes: [
        { name: 'length', mm: 20.33 },
        { name: 'wing', mm: 5 },
      ],
    },
  },
]);
const mould = shelf.things.mould.get(idOf('mould')) as Mould;
const inches = { ...SI_UNITS, length: 'in' } as const;

describe('the size a page tells', () => {
  it('says of which piece a built master has its size', () => {
    const built = shelfOf([
      { noun: 'master', is: 'wing', name: 'The wing', kind: 'original' },
      { noun: 'master', is: 'body', name: 'The body', kind: 'original', lengthMm: 20 },
      { noun: 'master', is: 'both', name: 'The built one', kind: 'carved', from: [idOf('body'), idOf('wing')] },
      { noun: 'mould', is: 'of both', master: idOf('both') },
      { noun: 'mould', is: 'of one', master: idOf('body') },
      { noun: 'mould', is: 'lost', master: idOf('half') },
      { noun: 'master', is: 'half', name: 'Half known', from: ['00000000000000000Y', idOf('wing')] },
    ]);
    const taken = (of: string) => sizesFor(built, idOf(of), SI_UNITS)[0]?.taken;
    expect(taken('of both')).toEqual([
      {
        says: 'The built one was built from 2 pieces. Its size is taken from the first:',
        title: 'The body',
        thing: built.things.master.get(idOf('body')),
      },
    ]);
    expect(taken('of one')).toEqual([]);
    expect(taken('lost')).toMatchObject([{ title: 'something that is no longer recorded' }]);
  });

  it('is one sentence of a mould that is only a name, and a figure a metal as soon as anything is known', () => {
    const thin = shelfOf([
      { noun: 'mould', is: 'thin', name: 'Some mould' },
      { noun: 'design', is: 'owl', name: 'Owl', metals: ['bronze'] },
      { noun: 'mould', is: 'said', design: idOf('owl') },
    ]);
    const of = (is: string) => sizesFor(thin, idOf(is), SI_UNITS)[0];
    expect(of('thin')).toMatchObject({ metals: [], plain: 'Its castings come out 4.9 to 5.2 % smaller than its master, by their metal.' });
    expect(of('said')?.plain).toBeUndefined();
    expect(of('said')?.metals).toHaveLength(1);
    expect(sizesFor(shelf, mould.id, SI_UNITS)[0]?.plain).toBeUndefined();
  });

  it('refuses what is no reading and no ring', () => {
    expect(['0', '-3', '1000000000', 'abc', 'US 99'].map((typed) => typedRing(typed) ?? typedReading(typed, SI_UNITS))).toMatchObject([
      { says: 'A reading is more than nothing.' },
      { says: 'A reading is more than nothing.' },
      { says: 'That is longer than anything that is cast here. Read the caliper again.' },
      { says: '“abc” is not a number.' },
      { says: 'No ring has the size “US 99”.' },
    ]);
    expect(typedReading('0,5', inches)).toBeCloseTo(12.7, 10);
    const asked = { measure: 'inside diameter', piece: 'casting', metal: undefined, of: undefined } as const;
    expect(whichSize(shelf, { ...asked, mm: 400 }, SI_UNITS)).toMatchObject({
      noRing: expect.stringMatching(/^No ring for a finger is 1.256\.64 mm around/),
    });
    expect(whichSize(shelf, { ...asked, mm: 17.32 }, SI_UNITS).ring).toMatchObject({ us: '7', uk: 'N½' });
  });

  it('says what a casting will be, what was lost, how large the next master has to be, and what it rests on', () => {
    const [size] = sizesFor(shelf, mould.id, SI_UNITS);
    expect(size?.metals[0]?.casting).toMatch(/^20\.\d+ ± 0\.\d+ mm, 5(\.\d)? % ± 0\.\d % less than its master$/);
    expect(size?.metals[0]?.since).toMatch(/^5(\.\d)? %$/);
    expect(size?.metals[0]?.master).toMatch(/^5\.\d % larger than the piece wanted: 22\.\d+ mm for large$/);
    expect(size?.from).toBe('Reckoned from the length of The original.');
    expect(size?.rests).toBe('Rests on 1 reading of yours.');
    expect(size?.smaller).toMatch(/^Castings from it come out at about 20\.\d mm in bronze: nearer to small than to large\.$/);
    expect(sizesFor(shelf, mould.id, inches)[0]?.metals[0]?.casting).toMatch(/ in, /);
    expect(sizesFor(shelf, idOf('owl'), SI_UNITS)).toHaveLength(1);
  });

  it('warns on the run’s form too', () => {
    expect(runFormOf(shelf, mould.id, SI_UNITS)?.smaller).toContain('nearer to small than to large');
  });

  it('sets readings beside those of what a thing came from', () => {
    expect(readingLines(shelf, idOf('bronzes'), SI_UNITS)).toEqual([
      { name: 'length', says: '20.33 mm', against: '5 % less than The original' },
      { name: 'wing', says: '5 mm' },
    ]);
  });

  it('tells generation and kin', () => {
    expect(kinSummary(shelf, idOf('bronzes'))).toEqual({
      says: 'Generation 1: a copy of the original.',
      counts: 'It came from 2 recorded things; nothing came of it yet.',
    });
  });
});

describe('which size a reading is', () => {
  const asked = { mm: 20.4, measure: 'length', piece: 'casting', metal: undefined, of: mould.id } as const;
  it('is the nearest of its design’s, for a wax after the metal has shrunk', () => {
    expect(whichSize(shelf, asked, SI_UNITS)).toMatchObject({ nearest: 'Nearest to small (20 mm), 0.4 mm over.' });
    const wax = whichSize(shelf, { ...asked, mm: 20.9, piece: 'wax', metal: 'bronze' }, SI_UNITS);
    expect(wax.casts).toMatch(/^It casts to about 20\.\d+ ± 0\.\d+ mm, by /);
    expect(wax.ladder.map(({ isNearest }) => isNearest)).toEqual([false, true]);
  });

  it('of a ring is told in every system, by its inside or around it', () => {
    const across = whichSize(shelf, { ...asked, mm: 17.32, measure: 'inside diameter', of: undefined }, SI_UNITS);
    const around = whichSize(shelf, { ...asked, mm: 54.41, measure: 'inside circumference', of: undefined }, SI_UNITS);
    for (const { ring } of [across, around]) expect(ring).toMatchObject({ iso: '54', us: '7', uk: 'N½', japan: '14' });
  });
});

describe('a trace as it is read', () => {
  const pool = (total: number, least: number, most: number) => ({ total, least, most });
  const trace = {
    made: pool(12, 10, 12),
    nowhere: pool(0, 0, 0),
    scrap: pool(1, 0, 1),
    piles: new Map([
      [idOf('waxes'), pool(9, 9, 9)],
      [idOf('bronzes'), pool(5, 0, 5)],
      [idOf('forgotten'), pool(3, 3, 3)],
    ]),
    flasks: new Map(),
    gone: [{ of: idOf('bronzes'), on: '2024-03-09' as never, reason: 'sold', to: 'the fair', pool: pool(2, 0, 2) }],
    masters: [],
  };
  it('says where each is and how sure, never more than is on hand, and gives the same as a list', () => {
    const page = tracePageOf(shelf, mould, trace, 'from shot 3 on');
    expect(page.says).toBe('10 to 12 good waxes came from its doubtful shots. Up to 1 piece went out as scrap.');
    expect(
      page.groups.map(({ heading, lines }) => [heading, lines.map(({ pieces, isCertain, where }) => [pieces, isCertain, where])]),
    ).toEqual([
      ['Injected waxes on hand', [['all 9', true, 'Drawer B2']]],
      ['Castings on hand', [['up to 4 of 4', false, 'no place']]],
      ['Gone', [['up to 2 of 2', false, 'sold to the fair on 9 March 2024']]],
    ]);
    expect(page.marks).toEqual([
      { id: idOf('waxes'), least: 9, most: 9 },
      { id: idOf('bronzes'), least: 0, most: 4 },
    ]);
    expect(page.list.title).toBe('What came from Mould 1, from shot 3 on');
    expect(page.list.rows).toHaveLength(3);
    expect(page.list.rows.every((row) => row.length === page.list.headings.length)).toBe(true);
  });
});
