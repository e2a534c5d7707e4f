import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { PlaceId } from '../../../src/domain/brand.ts';
import { describeFronts } from '../../../src/domain/drawing/details.ts';
import { type Drawing, startDrawing } from '../../../src/domain/drawing/drawing.ts';
import { drawingOf } from '../../../src/domain/drawing/drawing-of.ts';
import { moveEdge } from '../../../src/domain/drawing/edge.ts';
import { mergeFronts } from '../../../src/domain/drawing/merge.ts';
import { swapFronts } from '../../../src/domain/drawing/move.ts';
import { removeFronts } from '../../../src/domain/drawing/remove.ts';
import { splitFronts } from '../../../src/domain/drawing/split.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { isGone } from '../../../src/domain/gone.ts';
import { planSaveDrawing, type SaveDrawing } from '../../../src/domain/plans/save-drawing.ts';
import { isProblem, type Problem } from '../../../src/domain/problem.ts';
import type { Place, Shelf } from '../../../src/domain/shelf.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesk, aMould, anInjectedWax, aPlace, aShelf, codeOf, day, sha } from '../../support/builders.ts';
import { must } from '../../support/drawings.ts';

const room = aPlace({ name: 'Workshop', kind: 'room' });
const cabinet = aPlace({ name: 'Map chest', kind: 'cabinet', in: room.id, widthMm: 600, heightMm: 300 });
const drawer = (at: number, over: Partial<Place> = {}) =>
  aPlace({
    name: `Map chest ${at}`,
    label: String(at),
    in: cabinet.id,
    order: at,
    code: codeOf('place', at),
    box: { x: 0, y: (at - 1) * 100, w: 600, h: 100 },
    ...over,
  });
const [one, two, three] = [drawer(1), drawer(2), drawer(3)];
const away = aPlace({ name: 'Plater', kind: 'away' });
const box = aPlace({ name: 'Tin', kind: 'box', in: two.id });
const mould = aMould({ at: two.id });
const inTin = anInjectedWax({ at: box.id });
const lent = aMould({ at: away.id, usual: two.id, until: day('2024-05-06'), atSince: day('2024-02-01') });
const sold = aMould({ at: two.id, retired: { on: day('2024-01-02'), reason: 'sold' } });
const shelf = aShelf([room, cabinet, one, two, three, away, box, mould, inTin, lent, sold]);
const begun = drawingOf(shelf, cabinet);

function save(drawing: Drawing, over: Partial<SaveDrawing> = {}, on: Shelf = shelf): readonly Entry[] | Problem {
  return planSaveDrawing(on, aDesk(), { of: cabinet.id, drawing, begun, ...over });
}

function saved(
  drawing: Drawing,
  over: Partial<SaveDrawing> = {},
  on: Shelf = shelf,
): { readonly entries: readonly Entry[]; readonly after: Shelf } {
  const entries = save(drawing, over, on);
  if (isProblem(entries)) throw new Error(entries.says);
  return { entries, after: apply(on, entries) };
}

const placeIn = (on: Shelf, { id }: { readonly id: PlaceId }) => on.things.place.get(id);

describe('a new cabinet', () => {
  const drawing = must(splitFronts(startDrawing(900, 1000), ['new-1'], 3, 2));

  it('is recorded with its fronts, in its room, each with a code and a name of its own', () => {
    const made = planSaveDrawing(shelf, aDesk(), { name: 'Tall one', in: room.id, drawing, pictures: [sha(7)] }) as readonly Entry[];
    expect(made).toHaveLength(7);
    expect(made[0]).toMatchObject({
      kind: 'recorded',
      pictures: [sha(7)],
      fields: { name: 'Tall one', kind: 'cabinet', in: room.id, widthMm: 900, heightMm: 1000 },
    });
    const fields = made.slice(1).map((entry) => (entry as { fields: Record<string, unknown> }).fields);
    expect(fields[3]).toMatchObject({
      label: '4',
      name: 'Tall one 4',
      kind: 'drawer',
      in: made[0]?.id,
      order: 4,
      box: { x: 450, y: 0, w: 450, h: 333 },
    });
    expect(new Set(fields.map((each) => each['code'])).size).toBe(6);
    expect(made.slice(1).every(({ step }) => step === made[0]?.id)).toBe(true);
  });

  it('brings its room along, and is warned of when another goes by its name', () => {
    const made = planSaveDrawing(shelf, aDesk(), { name: 'Tall one', newRoom: ' Loft ', drawing }) as readonly Entry[];
    expect(made[0]).toMatchObject({ fields: { name: 'Loft', kind: 'room' } });
    expect(made[1]).toMatchObject({ fields: { name: 'Tall one', in: made[0]?.id } });
    const again = { name: 'MAP chest', drawing };
    expect(isWarning(planSaveDrawing(shelf, aDesk(), again))).toBe(true);
    expect(planSaveDrawing(shelf, aDesk(), { ...again, confirmed: true })).toHaveLength(7);
  });

  it('is refused without a name, in a room that is gone, and with a front outside, over another or beyond 400', () => {
    expect(beside(planSaveDrawing(shelf, aDesk(), { name: ' ', drawing }) as Problem, 'name')).toBe('Nothing was written here.');
    expect(beside(planSaveDrawing(shelf, aDesk(), { name: 'X', in: mould.id as string as PlaceId, drawing }) as Problem, 'in')).toContain(
      'no longer',
    );
    const with1 = (box: { x: number; y: number; w: number; h: number }) => ({
      ...drawing,
      fronts: drawing.fronts.map((front, at) => (at === 0 ? { ...front, box } : front)),
    });
    const says = (bad: Drawing) => (planSaveDrawing(shelf, aDesk(), { name: 'X', drawing: bad }) as Problem).says;
    expect(says(with1({ x: -9, y: 0, w: 100, h: 100 }))).toBe('1 would stick out of the cabinet.');
    expect(says(with1({ x: 500, y: 0, w: 100, h: 100 }))).toBe('1 and 4 would cover each other.');
    expect(
      says({
        ...drawing,
        fronts: Array.from({ length: 401 }, (_, at) => ({ ...drawing.fronts[0], key: `new-${at}` }) as Drawing['fronts'][0]),
      }),
    ).toBe('That makes 401 fronts; 400 fit in one cabinet here.');
    expect(says({ ...drawing, widthMm: 99_999 })).toContain('No cabinet is that small');
    const strange = { ...drawing, fronts: [{ ...drawing.fronts[0], hacked: 1 }] } as unknown as Drawing;
    expect(isProblem(planSaveDrawing(shelf, aDesk(), { name: 'X', drawing: strange }))).toBe(true);
  });
});

describe('a cabinet drawn again', () => {
  it('writes down nothing when nothing is different', () => {
    expect(save(begun)).toEqual([]);
    expect(save(begun, { name: 'Map chest', in: room.id, open: false })).toEqual([]);
  });

  it('only what was changed: a wider drawer keeps its id, code and contents', () => {
    const narrower = must(splitFronts(begun, [two.id], 1, 2));
    const { entries, after } = saved(must(moveEdge(narrower, [two.id], 'right', 50)));
    expect(entries.map(({ kind }) => kind)).toEqual(['corrected', 'recorded', 'corrected']);
    expect(entries[0]).toMatchObject({ of: two.id, fields: { box: { x: 0, y: 100, w: 350, h: 100 }, capacity: 31 } });
    expect(placeIn(after, two)).toMatchObject({ code: two.code, label: '2' });
    expect(after.contents.get(two.id)).toContain(mould.id);
    expect(entries[2]).toMatchObject({ of: three.id, fields: { order: 4 } });
  });

  it('leaves alone what somebody else changed meanwhile', () => {
    const meanwhile = aShelf(
      [...shelf.things.place.values()].map((place) => (place.id === one.id ? { ...one, label: 'Top', capacity: 9 } : place)),
    );
    const drawing = must(describeFronts(begun, [two.id], { for: 'moulds' }));
    expect(save(drawing, {}, meanwhile)).toMatchObject([{ of: two.id, fields: { for: 'moulds' } }]);
    expect(save(drawing, {}, meanwhile)).toHaveLength(1);
  });

  it('a front with another label is called after it where it was before', () => {
    const { entries } = saved(must(describeFronts(begun, [two.id], { label: 'Low', periods: [] })));
    expect(entries).toMatchObject([{ of: two.id, fields: { label: 'Low', name: 'Map chest Low' } }]);
  });

  it('two that change places change their boxes and their order', () => {
    const { after } = saved(must(swapFronts(begun, [one.id, three.id])));
    expect(placeIn(after, one)).toMatchObject({ order: 3, box: { y: 200 } });
    expect(placeIn(after, three)).toMatchObject({ order: 1, box: { y: 0 } });
  });

  it('merging drawers moves what is in them, boxes and loans too, into the one kept', () => {
    const { entries, after } = saved(must(mergeFronts(begun, [one.id, two.id])));
    expect(placeIn(after, one)).toMatchObject({ box: { x: 0, y: 0, w: 600, h: 200 }, capacity: 122 });
    expect(after.things.mould.get(mould.id)?.at).toBe(one.id);
    expect(placeIn(after, box)?.in).toBe(one.id);
    expect(after.things.injectedWax.get(inTin.id)?.at).toBe(box.id);
    expect(after.things.mould.get(lent.id)).toMatchObject({ at: away.id, usual: one.id, until: '2024-05-06', atSince: '2024-02-01' });
    expect(after.things.mould.get(sold.id)?.at).toBe(two.id);
    expect(placeIn(after, two)?.retired?.reason).toBe('removed');
    expect(isGone(after, placeIn(after, two) as Place)).toBe(true);
    expect(new Set(entries.map(({ id, step }) => step ?? id)).size).toBe(1);
  });

  it('a drawer that holds something is not taken out before it is said where to; an empty one is', () => {
    expect((save(must(removeFronts(begun, [two.id]))) as Problem).says).toContain('Say where the 2 things in 2 go');
    expect(saved(must(removeFronts(begun, [one.id]))).entries.map(({ kind }) => kind)).toContain('retired');
    const { after } = saved(must(removeFronts(begun, [two.id], three.id)));
    expect(after.things.mould.get(mould.id)?.at).toBe(three.id);
    const loose = saved(must(removeFronts(begun, [two.id], cabinet.id))).after;
    expect(loose.things.mould.get(mould.id)?.at).toBe(cabinet.id);
  });

  it('nothing goes to a place that is gone, out of use, or taken out itself', () => {
    const to = (target: string, on: Shelf = shelf) => (save(must(removeFronts(begun, [two.id], target)), {}, on) as Problem).says;
    expect(to('nowhere')).toContain('is no longer recorded');
    expect(to(box.id)).toContain('is taken out itself');
    const old = aPlace({ name: 'Old', retired: { on: day('2024-01-01'), reason: 'broken' } });
    expect(to(old.id, aShelf([...shelf.things.place.values(), mould, old]))).toContain('is out of use');
  });

  it('nothing stands in itself', () => {
    expect(beside(save(begun, { in: two.id }) as Problem, 'in')).toContain('cannot stand in itself');
    expect(beside(save(begun, { in: cabinet.id }) as Problem, 'in')).toContain('cannot stand in itself');
    const bad = { ...begun, fronts: begun.fronts.map((front, at) => (at === 0 ? { ...front, of: room.id } : front)) };
    expect(beside(save(bad) as Problem, 'drawing')).toContain('cannot be a front of this cabinet');
  });

  it('a drawer added by somebody else under a new front is warned of and stays', () => {
    const four = drawer(4, { box: { x: 0, y: 0, w: 90, h: 90 } });
    const meanwhile = aShelf([...shelf.things.place.values(), four]);
    const drawing = must(describeFronts(begun, [two.id], { for: 'moulds' }));
    expect(save(drawing, {}, meanwhile)).toMatchObject({ warnings: [expect.stringContaining('4 was added to Map chest meanwhile')] });
    expect(saved(drawing, { confirmed: true }, meanwhile).after.things.place.get(four.id)).toEqual(four);
  });

  it('fails whole: a recorded drawer that was taken back is drawn anew, a missing cabinet writes nothing', () => {
    const gone = aShelf([...shelf.things.place.values()].filter(({ id }) => id !== three.id));
    expect(save(begun, {}, gone)).toMatchObject([{ kind: 'recorded', fields: { label: '3', order: 3 } }]);
    expect(isProblem(save(begun, {}, aShelf([room])))).toBe(true);
  });

  it('keeps a picture of it once', () => {
    const { after, entries } = saved(begun, { pictures: [sha(3)] });
    expect(entries).toMatchObject([{ of: cabinet.id, pictures: [sha(3)] }]);
    expect(save(drawingOf(after, cabinet), { pictures: [sha(3)] }, after)).toEqual([]);
  });
});
