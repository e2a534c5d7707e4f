import type { Metal } from '../domain/design.ts';
import { sayNumber } from '../domain/measure-words.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import { type Mould, type Shelf, thingOf } from '../domain/shelf.ts';
import { ladderOf, nearestRung } from '../domain/size/ladder.ts';
import { learnedFrom } from '../domain/size/learn.ts';
import {
  isRingName,
  isRingSize,
  LARGEST_RING_MM,
  parseRingLabel,
  type RingSize,
  ringFromCircumference,
  SMALLEST_RING_MM,
} from '../domain/size/ring.ts';
import { castingSteps, metalStep, type Step } from '../domain/size/step.ts';
import { parseTypedNumber } from '../domain/typed-number.ts';
import { lengthIn, mmFrom, type Units } from '../domain/units.ts';
import { sayFine } from './size-page.ts';

export const MEASURES = ['inside diameter', 'inside circumference', 'length'] as const;
export type MeasureOf = (typeof MEASURES)[number];
export const PIECES = ['casting', 'wax', 'master'] as const;
export type PieceKind = (typeof PIECES)[number];

export interface AskedSize {
  readonly mm: number;
  readonly measure: MeasureOf;
  readonly piece: PieceKind;
  readonly metal: Metal | undefined;
  /** The mould or design it is of. */
  readonly of: string | undefined;
}

export interface WhichSize {
  /** What it will be as a casting, when a wax or a master was measured. */
  readonly casts?: string;
  readonly ring?: RingSize;
  /** Said in place of it of what is no finger's. */
  readonly noRing?: string;
  /** The nearest size of the design. */
  readonly nearest?: string;
  readonly ladder: readonly { readonly label: string; readonly says: string; readonly isNearest: boolean }[];
}

/** Which size a reading is: as it is for a casting, after the shrinking to come for a wax or a master. */
export function whichSize(shelf: Shelf, { mm, measure, piece, metal, of }: AskedSize, units: Units): WhichSize {
  const { factor, relative, readings } = learnedFrom(shelf).over(stepsTo(shelf, piece, metal, of));
  const isRing = measure !== 'length';
  const casting = (measure === 'inside circumference' ? mm / Math.PI : mm) * factor;
  const thing = thingOf(shelf, of);
  const design =
    thing?.noun === 'mould' ? thing.design && shelf.things.design.get(thing.design) : thing?.noun === 'design' ? thing : undefined;
  const ladder = ladderOf(design || undefined).filter((rung) => rung.isRing === isRing || !rung.isRing);
  const nearest = nearestRung(ladder, casting);
  const rest = readings > 0 ? ', by your own readings' : ', by common figures';
  return {
    ...(piece === 'casting'
      ? {}
      : { casts: `It casts to about ${sayWithSpread(casting, casting * relative, units)}${isRing ? ' inside' : ''}${rest}.` }),
    ...(isRing ? ringOf(casting * Math.PI, units) : {}),
    ...(nearest ? { nearest: `Nearest to ${nearest.label} (${sayFine(nearest.mm, units)}), ${offBy(casting - nearest.mm, units)}.` } : {}),
    ladder: ladder.map((rung) => ({ label: rung.label, says: sayFine(rung.mm, units), isNearest: rung === nearest })),
  };
}

function ringOf(circumferenceMm: number, units: Units): Pick<WhichSize, 'ring' | 'noRing'> {
  if (isRingSize(circumferenceMm)) return { ring: ringFromCircumference(circumferenceMm) };
  const [least, most] = [SMALLEST_RING_MM, LARGEST_RING_MM].map((mm) => sayFine(mm, units));
  return {
    noRing: `No ring for a finger is ${sayFine(circumferenceMm, units)} around inside; they are ${least} to ${most}. Read the caliper again.`,
  };
}

function sayWithSpread(mm: number, spread: number, { length }: Units): string {
  const places = length === 'mm' ? 2 : 3;
  return `${sayNumber(lengthIn(mm, length), places)} ± ${sayNumber(lengthIn(spread, length), places)} ${length}`;
}

function offBy(mm: number, units: Units): string {
  if (Math.abs(mm) < 0.005) return 'to the hundredth';
  return `${sayFine(Math.abs(mm), units)} ${mm > 0 ? 'over' : 'under'}`;
}

function stepsTo(shelf: Shelf, piece: PieceKind, metal: Metal | undefined, of: string | undefined): readonly Step[] {
  if (piece === 'casting') return [];
  if (piece === 'wax') return [metalStep(shelf, metal)];
  const thing = thingOf(shelf, of);
  return castingSteps(shelf, thing?.noun === 'mould' ? thing : usualMould(shelf, thing?.id), metal);
}

/** Of a design, its first mould in use stands for the next one. */
function usualMould(shelf: Shelf, design: string | undefined): Mould | undefined {
  if (design === undefined) return undefined;
  for (const mould of shelf.things.mould.values()) {
    if (mould.design === design && !mould.retired && mould.purpose !== 'intermediate') return mould;
  }
  return undefined;
}

/** A ring's size typed by its name, such as “US 7”, as an inside diameter in mm; undefined for what is no such name. */
export function typedRing(typed: string): number | undefined | Problem {
  if (!isRingName(typed)) return undefined;
  return parseRingLabel(typed)?.diameterMm ?? problem(`No ring has the size “${typed.trim().slice(0, 20)}”.`);
}

/** The longest reading there can be, mm; measured things keep no longer one either. */
const LONGEST_MM = 10_000;

/** A caliper's reading as typed, mm. */
export function typedReading(typed: string, { length }: Units): number | undefined | Problem {
  const read = parseTypedNumber(typed);
  if (read === undefined || isProblem(read)) return read;
  if (read <= 0) return problem('A reading is more than nothing.');
  const mm = mmFrom(read, length);
  return mm > LONGEST_MM ? problem('That is longer than anything that is cast here. Read the caliper again.') : mm;
}
