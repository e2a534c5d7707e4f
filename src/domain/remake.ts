import type { Day, DesignId } from './brand.ts';
import { addDays } from './day.ts';
import { isLivingMould } from './last-of-kind.ts';
import { kindsMade, mouldsMaking } from './made-kinds.ts';
import type { Rubber } from './mould.ts';
import type { Casting, Design, InjectedWax, Mould, Shelf, Want } from './shelf.ts';
import { through } from './slices.ts';

/** A design in one size, the pieces of it that are wanted and not there, and the moulds that could make them. */
export interface WantedKind {
  readonly design: DesignId;
  readonly size?: string;
  /** Living production moulds. */
  readonly moulds: readonly Mould[];
  /** Castings wanted beyond what is on hand as castings and waxes, of which so many for wants and the rest to keep. */
  readonly pieces: number;
  readonly forWants: number;
  readonly due?: Day;
}

/** Days from pouring the rubber to the first shot. Natural and vulcanised rubber cure in an hour or so (7½ min a layer, trade-facts 7), cutting and cooling make a day of it;
 * room-temperature rubber takes 16–24 h (flexiblejewelrymolds.com), often in two halves; tin rubber is left to gain strength, from memory. */
export const CURE_DAYS: Readonly<Record<Rubber, number>> = {
  natural: 1,
  'vulcanised silicone': 1,
  'platinum silicone': 2,
  'tin silicone': 3,
};
/** Days from the first shot to finished castings. Common practice, no source. */
export const CASTING_DAYS = 4;

const SIZE_UNKNOWN = '';

/** Kinds of which more is wanted than is there, in no order, a slice at a time. Poured-in-the-mould designs are left out: they wear by the pour. */
export function* kindsInSlices(shelf: Shelf): Generator<void, readonly WantedKind[]> {
  const { want, casting, injectedWax, design: designs } = shelf.things;
  const wants = new Map<DesignId, Want[]>();
  const onHand = new Map<DesignId, (Casting | InjectedWax)[]>();
  yield* byDesign(want.values() as Iterable<Want>, wants);
  yield* byDesign(casting.values() as Iterable<Casting>, onHand);
  yield* byDesign(injectedWax.values() as Iterable<InjectedWax>, onHand);
  const kinds: WantedKind[] = [];
  let looked = 0;
  for (const design of designs.values() as Iterable<Design>) {
    looked += 1;
    if (looked % DESIGNS_AT_ONCE === 0) yield;
    const asked = wants.get(design.id) ?? [];
    if (design.retired || design.route === 'poured in the mould' || (asked.length === 0 && !design.keep)) continue;
    const moulds = mouldsMaking(shelf, design.id).filter((mould) => isLivingMould(mould) && mould.purpose !== 'intermediate');
    kinds.push(...kindsOf(shelf, design, moulds, asked, onHand.get(design.id) ?? []));
  }
  return kinds;
}

/** The same without a break. */
export function wantedKinds(shelf: Shelf): readonly WantedKind[] {
  return through(kindsInSlices(shelf));
}

/** Things and designs looked at between two breaths. */
const THINGS_AT_ONCE = 300;
const DESIGNS_AT_ONCE = 20;

/** Puts things that are not retired into `groups`. */
function* byDesign<T extends { readonly design?: DesignId; readonly retired?: unknown }>(
  things: Iterable<T>,
  groups: Map<DesignId, T[]>,
): Generator<void, void> {
  let looked = 0;
  for (const thing of things) {
    looked += 1;
    if (looked % THINGS_AT_ONCE === 0) yield;
    if (!thing.design || thing.retired) continue;
    const group = groups.get(thing.design);
    if (group) group.push(thing);
    else groups.set(thing.design, [thing]);
  }
}

/** What is to be kept on hand is shared out evenly over the sizes that have moulds; pieces of no known size are taken for whichever size lacks. */
function kindsOf(
  shelf: Shelf,
  design: Design,
  moulds: readonly Mould[],
  wants: readonly Want[],
  piles: readonly (Casting | InjectedWax)[],
): WantedKind[] {
  const sizesOf = (mould: Mould) =>
    kindsMade(shelf, mould).flatMap((made) => (made.design === design.id ? [made.size ?? SIZE_UNKNOWN] : []));
  const withMoulds = new Set(moulds.flatMap(sizesOf));
  const sizes = new Set([...withMoulds, ...wants.map(({ size = SIZE_UNKNOWN }) => size)]);
  if (sizes.size === 0) sizes.add(SIZE_UNKNOWN);
  const share = Math.ceil((design.keep ?? 0) / Math.max(1, withMoulds.size));
  const sum = (list: readonly { readonly pieces?: number }[]) => list.reduce((total, { pieces = 0 }) => total + Math.max(0, pieces), 0);
  let spare = sum(piles.filter(({ size = SIZE_UNKNOWN }) => !sizes.has(size)));
  return [...sizes].flatMap((size) => {
    const own = wants.filter((want) => (want.size ?? SIZE_UNKNOWN) === size);
    const wanted = sum(own);
    const kept = withMoulds.has(size) || withMoulds.size === 0 ? share : 0;
    const have = sum(piles.filter((pile) => (pile.size ?? SIZE_UNKNOWN) === size));
    const lacking = Math.max(0, wanted + kept - have);
    const fromSpare = Math.min(spare, lacking);
    spare -= fromSpare;
    const pieces = lacking - fromSpare;
    if (pieces === 0) return [];
    const due = own.flatMap((want) => want.due ?? []).sort()[0];
    const ofSize = size === SIZE_UNKNOWN ? moulds : moulds.filter((mould) => sizesOf(mould).includes(size));
    const forWants = Math.min(pieces, Math.max(0, wanted - have - fromSpare));
    return [{ design: design.id, ...(size === SIZE_UNKNOWN ? {} : { size }), moulds: ofSize, pieces, forWants, ...(due ? { due } : {}) }];
  });
}

/** A new mould is given credit for this many shots without a reject, and castings for ten with one scrapped. Common practice, no source. */
const CREDIT = { shots: 5, sound: 9, cast: 10 } as const;

/**
 * Shots that so many sound castings take from a mould, by its own good waxes a shot and sound castings; `made` is the share of its pieces that are
 * of the kind wanted.
 */
export function shotsFor(mould: Mould, pieces: number, made = 1): number {
  const cavities = mould.cavities ?? 1;
  const credit = CREDIT.shots * cavities;
  // Of the waxes that were counted: those of shots from before Mouldkeep were not.
  const waxesAShot = (cavities * (mould.good + credit)) / (mould.good + mould.rejects + credit);
  const sound = (mould.sound ?? 0) + CREDIT.sound;
  const share = sound / ((mould.sound ?? 0) + (mould.scrap ?? 0) + CREDIT.cast);
  return Math.ceil(pieces / Math.max(0.01, waxesAShot * share * made) - 1e-9);
}

/**
 * The chance that pieces will be missing: that none of the moulds makes them all by itself. Two moulds may share the work, which makes it too
 * high; moulds of one rubber are wrong together, which makes it too low. 1 without a mould; undefined when nothing can be forecast of any.
 */
export function chanceOfMissing(chances: readonly (number | undefined)[]): number | undefined {
  if (chances.length === 0) return 1;
  const known = chances.filter((chance) => chance !== undefined);
  return known.length === 0 ? undefined : known.reduce((missing, chance) => missing * (1 - chance), 1);
}

/** The day to start a new mould, so that its castings are there when they are wanted. */
export function startBy(due: Day, rubber: Rubber | undefined): Day {
  return addDays(due, -daysToCastings(rubber));
}

/** Days from pouring the rubber to finished castings. */
export function daysToCastings(rubber: Rubber | undefined): number {
  return CURE_DAYS[rubber ?? 'platinum silicone'] + CASTING_DAYS;
}
