import { generationOf } from '../domain/lineage/generation.ts';
import { isKin } from '../domain/lineage/kin.ts';
import { sayCount, sayLength, sayNumber } from '../domain/measure-words.ts';
import { type Mould, type Shelf, type Thing, thingOf } from '../domain/shelf.ts';
import { type Expected, expectedCastings, rungOf, smallerThanLabel } from '../domain/size/expected.ts';
import { isPlausible, pairsOf } from '../domain/size/learn.ts';
import { isPoured, sizeTakenFrom } from '../domain/size/step.ts';
import { titleOf } from '../domain/title.ts';
import { lengthIn, type Units } from '../domain/units.ts';

/** A caliper is read to a hundredth of a millimetre, a tenth of a thousandth of an inch. */
export function sayFine(mm: number, { length }: Units): string {
  return `${sayNumber(lengthIn(mm, length), length === 'mm' ? 2 : 3)} ${length}`;
}

/** “20.91 ± 0.21 mm”: one standard deviation. */
function sayWith(mm: number, spread: number, { length }: Units): string {
  const places = length === 'mm' ? 2 : 3;
  return `${sayNumber(lengthIn(mm, length), places)} ± ${sayNumber(lengthIn(spread, length), places)} ${length}`;
}

const percent = (value: number) => `${sayNumber(value, 1)} %`;

export interface MetalSize {
  readonly metal: string;
  readonly casting: string;
  readonly since: string;
  readonly master: string;
}

export interface MouldSize {
  readonly id: string;
  readonly title: string;
  /** What the castings are reckoned from. */
  readonly from: string;
  readonly metals: readonly MetalSize[];
  /** That castings come out nearer to a smaller size than to the label. */
  readonly smaller?: string;
  readonly rests: string;
  /** In place of a figure for each metal, as long as so little is known that they hardly differ. */
  readonly plain?: string;
  /** Masters on the way that were built from several pieces, and the piece each has its size from. */
  readonly taken: readonly { readonly says: string; readonly title: string; readonly thing?: Thing }[];
}

/** What a mould's castings come out as in each metal, what was lost since the original, and how large the next master has to be. */
export function mouldSize(shelf: Shelf, mould: Mould, units: Units): MouldSize {
  const all = expectedCastings(shelf, mould);
  const smaller = smallerThanLabel(shelf, mould);
  const [first] = all;
  const isLeast = generationOf(shelf, mould.id)?.isLeast === true;
  const from = first?.size
    ? `Reckoned from the ${first.size.name} of ${titleOf(shelf, first.size.from)}.`
    : 'Nothing above it was measured, so only the share lost can be told. Measure its master.';
  const readings = Math.max(0, ...all.map((each) => each.readings));
  const rests = readings > 0 ? `Rests on ${sayCount(readings, 'reading')} of yours.` : 'Rests on common figures: nothing was measured yet.';
  const poured = isPoured(shelf, mould) ? ' Metal is poured straight into it, so no wax shrinks.' : '';
  const isThin = first?.size === undefined && readings === 0 && !metalsSaid(shelf, mould);
  const figures = isThin
    ? { metals: [], plain: plainly(all) }
    : { metals: all.map((each) => metalSize(each, rungOf(shelf, mould)?.label, isLeast, units)) };
  return {
    id: mould.id,
    title: titleOf(shelf, mould),
    from: `${from}${poured}`,
    ...figures,
    taken: takenFrom(shelf, mould),
    ...(smaller ? { smaller: smallerSays(smaller, units) } : {}),
    rests,
  };
}

const metalsSaid = (shelf: Shelf, { design }: Mould) => (design ? (shelf.things.design.get(design)?.metals?.length ?? 0) > 0 : false);

function plainly(all: readonly Expected[]): string {
  const lost = all.map((each) => each.percent);
  const [least, most] = [Math.min(...lost), Math.max(...lost)].map((value) => sayNumber(value, 1));
  return `Its castings come out ${least === most ? least : `${least} to ${most}`} % smaller than its master, by their metal.`;
}

function takenFrom(shelf: Shelf, mould: Mould): MouldSize['taken'] {
  return sizeTakenFrom(shelf, mould).map(({ built, from, pieces }) => {
    const thing = thingOf(shelf, from);
    const says = `${titleOf(shelf, built)} was built from ${pieces} pieces. Its size is taken from the first:`;
    return { says, title: titleOf(shelf, thing), ...(thing ? { thing } : {}) };
  });
}

function metalSize(expected: Expected, label: string | undefined, isLeast: boolean, units: Units): MetalSize {
  const { metal, size, percent: lost, percentSpread, sinceOriginal, masterShare, masterMm } = expected;
  return {
    metal,
    casting: `${size ? `${sayWith(size.mm, size.spread, units)}, ` : ''}${percent(lost)} ± ${percent(percentSpread)} less than its master`,
    since: `${percent(sinceOriginal)}${isLeast ? ' at least' : ''}`,
    master: `${percent((masterShare - 1) * 100)} larger than the piece wanted${masterMm === undefined ? '' : `: ${sayFine(masterMm, units)} for ${label}`}`,
  };
}

export function smallerSays({ metal, size, label, nearest }: NonNullable<ReturnType<typeof smallerThanLabel>>, units: Units): string {
  return `Castings from it come out at about ${sayLength(size.mm, units)} in ${metal}: nearer to ${nearest.label} than to ${label.label}.`;
}

/** The moulds whose castings' sizes a thing's page tells: a mould's own, a design's that are in use. */
export function sizesFor(shelf: Shelf, id: string, units: Units): readonly MouldSize[] {
  const thing = thingOf(shelf, id);
  if (thing?.noun === 'mould') return [mouldSize(shelf, thing, units)];
  if (thing?.noun !== 'design') return [];
  return [...shelf.things.mould.values()]
    .filter((mould) => mould.design === id && !mould.retired && mould.purpose !== 'intermediate' && mould.grade !== 'failed')
    .map((mould) => mouldSize(shelf, mould, units));
}

export interface ReadingLine {
  readonly name: string;
  readonly says: string;
  /** Against what it came from. */
  readonly against?: string;
}

/** The readings of a thing, beside those of what it came from. */
export function readingLines(shelf: Shelf, id: string, units: Units): readonly ReadingLine[] {
  const thing = thingOf(shelf, id);
  const sizes = thing?.measured?.sizes ?? [];
  const kin = isKin(thing) ? thing : undefined;
  const pairs = kin ? pairsOf(shelf, kin) : [];
  return sizes.map(({ name, mm }) => {
    const pair = pairs.find((each) => each.name === name);
    const lost = pair && (1 - pair.childMm / pair.parentMm) * 100;
    const than =
      pair && lost !== undefined && `${percent(Math.abs(lost))} ${lost >= 0 ? 'less' : 'more'} than ${titleOf(shelf, pair.parent)}`;
    return {
      name,
      says: sayFine(mm, units),
      ...(than ? { against: `${than}${pair && !isPlausible(pair) ? '; nothing is learned from it' : ''}` } : {}),
    };
  });
}
