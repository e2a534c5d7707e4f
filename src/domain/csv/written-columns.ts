import { fold } from '../folding.ts';
import type { Noun } from '../noun.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { placeAround, placesAround } from '../whereabouts.ts';
import { type Box, type Size, writeBox, writeNumber, writeSizes } from './exact-cell.ts';
import { type Named, writeNamed } from './named.ts';
import type { COLUMNS, Target } from './targets.ts';

/** What a thing's cell says in a list that comes back in; undefined leaves the cell empty. */
type Write<N extends Noun> = (thing: Thing<N>, shelf: Shelf) => string | undefined;
/** How each column that a list can have is written; `null` for one that only says what another one says too. */
type Written = { readonly [T in Target]: { readonly [K in keyof (typeof COLUMNS)[T]]: Write<T> | null } };

const figure = (value: number | undefined) => (value === undefined ? undefined : writeNumber(value));
const words = (list: readonly string[] | undefined) => list?.join('; ');
/** Columns that every list has, at its beginning and its end. */
const OPENING = { number: ({ code }: Thing) => code, name: ({ name }: Thing) => name };
const CLOSING = {
  labelled: (thing: Thing<Target>) => thing.labelled,
  retired: (thing: Thing) => thing.retired?.reason,
  retiredOn: (thing: Thing) => thing.retired?.on,
  note: ({ note }: Thing) => note,
};

/** Things by their own names and codes, so that the very same ones are found again. */
export function namedIn(shelf: Shelf, ids: readonly (string | undefined)[]): string {
  const things = ids.flatMap((id) => thingOf(shelf, id) ?? []);
  return writeNamed(things.map((thing) => nameAndCode(shelf, thing)));
}

function nameAndCode(shelf: Shelf, thing: Thing): Named & { isExact?: boolean } {
  const name = thing.noun === 'place' ? undefined : (thing.name ?? (thing.code ? undefined : titleOf(shelf, thing)));
  if (thing.code !== undefined) return { ...(name === undefined ? {} : { name }), code: thing.code };
  return name === undefined ? {} : { name, isExact: !isPlainly(shelf, thing, name) };
}

const foldedNames = new WeakMap<object, ReadonlyMap<string, number>>();

/** Whether the name, read without regard to accents and capitals, is one thing's only. */
function isPlainly(shelf: Shelf, { noun }: Thing, name: string): boolean {
  const things = shelf.things[noun] as ReadonlyMap<string, Thing>;
  let counts = foldedNames.get(things);
  if (!counts) {
    const fresh = new Map<string, number>();
    for (const each of things.values()) if (each.name) fresh.set(fold(each.name), (fresh.get(fold(each.name)) ?? 0) + 1);
    foldedNames.set(things, fresh);
    counts = fresh;
  }
  return fold(name) !== '' && counts.get(fold(name)) === 1;
}

const named = (key: string) => (thing: Thing, shelf: Shelf) => namedIn(shelf, [(thing as unknown as Record<string, string>)[key]]);
const namedAll = (key: string) => (thing: Thing, shelf: Shelf) =>
  namedIn(shelf, (thing as unknown as Record<string, readonly string[]>)[key] ?? []);

/** A place by its path, “Cabinet A › A3 [PABC1234]”; without a code the path alone leads to it. */
export function placeWithPath(shelf: Shelf, id: string | undefined): string {
  const around = placesAround(shelf, id as Thing<'place'>['id'] | undefined);
  const last = around.at(-1);
  if (!last) return '';
  const path = around.flatMap((place) => place.name ?? []).join(' › ');
  return last.code === undefined ? path : writeNamed([{ ...(path === '' ? {} : { name: path }), code: last.code }]);
}

const at = (thing: Thing, shelf: Shelf) => placeWithPath(shelf, thing.at);

export const WRITTEN: Written = {
  place: {
    ...OPENING,
    in: (place, shelf) => placeWithPath(shelf, placeAround(shelf, place)),
    kind: ({ kind }) => kind,
    label: ({ label }) => label,
    period: namedAll('periods'),
    for: (place) => place.for,
    capacity: ({ capacity }) => figure(capacity),
    widthMm: ({ widthMm }) => figure(widthMm),
    heightMm: ({ heightMm }) => figure(heightMm),
    box: ({ box }) => (box === undefined ? undefined : writeBox(box as Box)),
    order: ({ order }) => figure(order),
    open: ({ open }) => (open === undefined ? undefined : open ? 'yes' : 'no'),
    holder: ({ holder }) => holder,
    ...CLOSING,
  },
  design: {
    ...OPENING,
    sort: ({ sort }) => sort,
    period: namedAll('periods'),
    sizes: ({ sizes }) => (sizes === undefined ? undefined : writeSizes(sizes as readonly Size[])),
    metals: ({ metals }) => words(metals),
    route: ({ route }) => route,
    waxGrams: ({ waxGrams }) => figure(waxGrams),
    keep: ({ keep }) => figure(keep),
    also: ({ also }) => also,
    ...CLOSING,
  },
  master: {
    ...OPENING,
    design: named('design'),
    size: ({ size }) => size,
    period: null,
    place: at,
    cabinet: null,
    kind: ({ kind }) => kind,
    state: ({ state }) => state,
    material: ({ material }) => material,
    made: ({ made }) => made,
    lengthMm: ({ lengthMm }) => figure(lengthMm),
    ...CLOSING,
  },
  wax: {
    ...OPENING,
    colour: ({ colour }) => colour,
    behaviour: ({ behaviour }) => behaviour,
    use: ({ use }) => use,
    pressure: ({ pressure }) => pressure,
    // More was used than was ever written down as received: there is no such stock to bring in.
    grams: ({ grams }) => (grams > 0 ? writeNumber(grams) : undefined),
    room: null,
    roomLowC: ({ roomLowC }) => figure(roomLowC),
    roomHighC: ({ roomHighC }) => figure(roomHighC),
    inject: null,
    injectLowC: ({ injectLowC }) => figure(injectLowC),
    injectHighC: ({ injectHighC }) => figure(injectHighC),
    pressureLowKpa: ({ pressureLowKpa }) => figure(pressureLowKpa),
    pressureHighKpa: ({ pressureHighKpa }) => figure(pressureHighKpa),
    deliveryDays: ({ deliveryDays }) => figure(deliveryDays),
    keepGrams: ({ keepGrams }) => figure(keepGrams),
    place: at,
    cabinet: null,
    ...CLOSING,
  },
  mould: {
    ...OPENING,
    design: named('design'),
    size: ({ size }) => size,
    period: null,
    place: at,
    cabinet: null,
    master: named('master'),
    masters: namedAll('masters'),
    purpose: ({ purpose }) => purpose,
    rubber: ({ rubber }) => rubber,
    cavities: ({ cavities }) => figure(cavities),
    made: ({ made }) => made,
    shots: ({ shots }) => (shots > 0 ? writeNumber(shots) : undefined),
    lastUsed: ({ runs }) => runs?.at(-1)?.on,
    grade: ({ grade }) => grade,
    faults: ({ faults }) => words(faults),
    inspected: ({ gradeOn }) => gradeOn,
    shotGrams: ({ shotGrams }) => figure(shotGrams),
    wax: named('wax'),
    waxC: ({ injection }) => figure(injection?.waxC),
    pressureKpa: ({ injection }) => figure(injection?.pressureKpa),
    holdS: ({ injection }) => figure(injection?.holdS),
    expectedShots: ({ expectedShots }) => figure(expectedShots),
    ...CLOSING,
  },
};
