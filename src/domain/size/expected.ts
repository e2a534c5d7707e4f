import { METALS, type Metal } from '../design.ts';
import { generationOf } from '../lineage/generation.ts';
import type { Kin } from '../lineage/kin.ts';
import type { Mould, Shelf } from '../shelf.ts';
import { masterFor } from './compound.ts';
import { ladderOf, nearestRung, type Rung } from './ladder.ts';
import { learnedFrom, readingsOf } from './learn.ts';
import { type Reading, sameDimension } from './reading.ts';
import { castingSteps, lineUp, type Step } from './step.ts';

/** A figure with one standard deviation, mm. */
export interface Spread {
  readonly mm: number;
  readonly spread: number;
}

/** What a casting out of a mould is expected to be in one metal. */
export interface Expected {
  readonly metal: Metal;
  /** Loss from the mould's master to the casting, linear %, with one standard deviation. */
  readonly percent: number;
  readonly percentSpread: number;
  /** Loss since the original, or since where its records begin. */
  readonly sinceOriginal: number;
  /** Readings the loss rests on. */
  readonly readings: number;
  readonly size?: Spread & { readonly name: string; readonly from: Kin };
  /** What the next master has to be, as a share of the piece wanted, and in mm where the size wanted has some. */
  readonly masterShare: number;
  readonly masterMm?: number;
}

/** The metals a mould's pieces are made in: those its design is offered in, else all. */
function metalsOf(shelf: Shelf, mould: Mould): readonly Metal[] {
  const metals = mould.design && shelf.things.design.get(mould.design)?.metals;
  return metals?.length ? metals : METALS;
}

/** What a mould's castings come out as, a metal each. */
export function expectedCastings(shelf: Shelf, mould: Mould): readonly Expected[] {
  const learned = learnedFrom(shelf);
  const base = baseOf(shelf, mould);
  const above = lineUp(shelf, mould).flatMap(({ steps }) => steps);
  const wanted = rungOf(shelf, mould);
  return metalsOf(shelf, mould).map((metal) => {
    const own = castingSteps(shelf, mould, metal);
    const { factor, relative, readings } = learned.over(own);
    const whole = learned.over([...own, ...above]);
    const down = base && learned.over([...own, ...base.steps]);
    return {
      metal,
      percent: (1 - factor) * 100,
      percentSpread: factor * relative * 100,
      sinceOriginal: (1 - whole.factor) * 100,
      readings,
      ...(base && down
        ? {
            size: {
              name: base.reading.name,
              from: base.thing,
              mm: base.reading.mm * down.factor,
              spread: base.reading.mm * down.factor * down.relative,
            },
          }
        : {}),
      masterShare: masterFor(1, factor),
      ...(wanted ? { masterMm: masterFor(wanted.mm, factor) } : {}),
    };
  });
}

/** Whether the way up to an original is all recorded. */
export function isWholeLine(shelf: Shelf, mould: Mould): boolean {
  return generationOf(shelf, mould.id)?.isLeast === false;
}

interface Base {
  readonly thing: Kin;
  readonly reading: Reading;
  /** Steps between that thing and the mould. */
  readonly steps: readonly Step[];
}

const INSIDE = ['inside diameter', 'diameter'];

/** The nearest thing above a mould that was measured; by its length, or a ring by its inside. */
function baseOf(shelf: Shelf, mould: Mould): Base | undefined {
  const isRing = rungOf(shelf, mould)?.isRing === true;
  const wanted = isRing ? INSIDE : ['length'];
  const steps: Step[] = [];
  for (const { thing, steps: own } of lineUp(shelf, mould)) {
    const readings = thing.noun === 'mould' ? [] : readingsOf(thing);
    const reading = readings.find(({ name }) => wanted.some((each) => sameDimension(each, name))) ?? (isRing ? undefined : readings.at(-1));
    if (reading) return { thing, reading, steps };
    steps.push(...own);
  }
  return undefined;
}

/** The size of its design that a mould is labelled with, where it has millimetres. */
export function rungOf(shelf: Shelf, mould: Mould): Rung | undefined {
  const design = mould.design && shelf.things.design.get(mould.design);
  return design ? ladderOf(design).find(({ label }) => label === mould.size) : undefined;
}

export interface Smaller {
  readonly metal: Metal;
  readonly size: Spread;
  readonly label: Rung;
  readonly nearest: Rung;
}

/**
 * Whether a mould's castings come out nearer to a smaller size than to their label; told for the metal that shrinks most. An intermediate
 * mould's waxes become masters, so nothing is said of it.
 */
export function smallerThanLabel(shelf: Shelf, mould: Mould): Smaller | undefined {
  if (mould.purpose === 'intermediate' || !mould.design) return undefined;
  const label = rungOf(shelf, mould);
  if (!label) return undefined;
  const ladder = ladderOf(shelf.things.design.get(mould.design));
  let found: Smaller | undefined;
  for (const { metal, size } of expectedCastings(shelf, mould)) {
    if (!size || !isOfLabel(size.name, label)) continue;
    const nearest = nearestRung(ladder, size.mm);
    if (nearest && nearest.mm < label.mm && (!found || size.mm < found.size.mm)) found = { metal, size, label, nearest };
  }
  return found;
}

/** A label's millimetres are a length, or a ring's inside; other dimensions say nothing about it. */
function isOfLabel(name: string, { isRing }: Rung): boolean {
  return (isRing ? INSIDE : ['length']).some((each) => sameDimension(each, name));
}
