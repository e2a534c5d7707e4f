import type { PeriodId, PlaceId } from '../brand.ts';
import type { FrontRect } from '../front-layout.ts';
import type { PLACE_FOR } from '../place.ts';
import { type Problem, problem } from '../problem.ts';
import { isInside, isTooSmall, LEAST_MM, overlap, spanOf, tenths, withSpan } from './box.ts';

/** What can stand in a cabinet and show a front. */
export const FRONT_KINDS = ['drawer', 'shelf', 'box'] as const;
export type FrontKind = (typeof FRONT_KINDS)[number];

/** What is said of a front, besides where it is. */
export interface FrontDetails {
  readonly label: string;
  readonly kind: FrontKind;
  readonly open?: boolean;
  readonly periods: readonly PeriodId[];
  readonly for?: (typeof PLACE_FOR)[number];
  readonly capacity?: number;
}

export interface DrawnFront extends FrontDetails {
  /** Its name within the drawing. */
  readonly key: string;
  /** The place that is recorded already; a front without it is new. */
  readonly of?: PlaceId;
  readonly box: FrontRect;
}

/** A recorded place that the drawing does without. What stood in it goes to a front (its key) or to a place elsewhere. */
export interface Gone {
  readonly of: PlaceId;
  readonly label: string;
  readonly to?: string;
}

/** A cabinet's front as it is being drawn, mm. Never changed: every step makes another. The order of the fronts is their order on lists. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly fronts: readonly DrawnFront[];
  readonly gone: readonly Gone[];
  /** Number of the next new front. */
  readonly next: number;
}

export const FRONTS_MAX = 400;
export const SIDE_MAX_MM = 20_000;

export const UNDRAWN = 'The drawing is as it was.';

export function undrawn(says: string): Problem {
  return problem(says, UNDRAWN);
}

/** An empty cabinet with one front over the whole of it, to be cut up. */
export function startDrawing(widthMm: number, heightMm: number, kind: FrontKind = 'drawer'): Drawing {
  const front: DrawnFront = { key: 'new-1', label: '1', kind, periods: [], box: { x: 0, y: 0, w: widthMm, h: heightMm } };
  return { widthMm, heightMm, fronts: [front], gone: [], next: 2 };
}

export function frontsOfKeys(drawing: Drawing, keys: readonly string[]): readonly DrawnFront[] {
  return drawing.fronts.filter(({ key }) => keys.includes(key));
}

/** The drawing with other boxes for some of its fronts; a Problem names what is in the way, too small or outside. */
export function withBoxes(drawing: Drawing, boxes: ReadonlyMap<string, FrontRect>): Drawing | Problem {
  const fronts = drawing.fronts.map((front) => ({ ...front, box: boxes.get(front.key) ?? front.box }));
  const wrong = wrongAmong(drawing, fronts, (key) => boxes.has(key));
  return wrong ?? { ...drawing, fronts };
}

/** What is wrong with where the fronts are; only those that `isNew` names are looked at, against all. */
export function wrongAmong(
  { widthMm, heightMm }: Pick<Drawing, 'widthMm' | 'heightMm'>,
  fronts: readonly DrawnFront[],
  isNew: (key: string) => boolean,
): Problem | undefined {
  for (const { key, label, box } of fronts) {
    if (!isNew(key)) continue;
    if (![box.x, box.y, box.w, box.h].every(Number.isFinite)) return undrawn(`${label} has no proper size.`);
    if (isTooSmall(box)) return undrawn(`${label} would be too small for a front.`);
    if (!isInside(spanOf(box, 'x'), { low: 0, high: widthMm }) || !isInside(spanOf(box, 'y'), { low: 0, high: heightMm }))
      return undrawn(`${label} would stick out of the cabinet.`);
    const other = fronts.find((each) => each.key !== key && overlap(each.box, box));
    if (other) return undrawn(`${label} and ${other.label} would cover each other.`);
  }
  return undefined;
}

/** All that is wrong with a drawing, or nothing. */
export function wrongWith(drawing: Drawing): Problem | undefined {
  const { widthMm, heightMm, fronts } = drawing;
  const wrongSide = [widthMm, heightMm].some((side) => !(side >= LEAST_MM && side <= SIDE_MAX_MM));
  if (wrongSide) return undrawn('No cabinet is that small, or that large. Put its width and height right.');
  return tooMany(fronts.length) ?? wrongAmong(drawing, fronts, () => true);
}

export function tooMany(count: number): Problem | undefined {
  return count > FRONTS_MAX ? undrawn(`That makes ${count} fronts; ${FRONTS_MAX} fit in one cabinet here.`) : undefined;
}

/** Another outside measure for the cabinet: its fronts keep their share of it. */
export function resizeCabinet(drawing: Drawing, widthMm: number, heightMm: number): Drawing | Problem {
  const [across, down] = [widthMm / drawing.widthMm, heightMm / drawing.heightMm];
  const scaled = (by: number, { low, high }: { low: number; high: number }) => ({ low: tenths(low * by), high: tenths(high * by) });
  const fronts = drawing.fronts.map((front) => {
    const wide = withSpan(front.box, 'x', scaled(across, spanOf(front.box, 'x')));
    return { ...front, box: withSpan(wide, 'y', scaled(down, spanOf(front.box, 'y'))) };
  });
  const next = { ...drawing, widthMm, heightMm, fronts };
  return wrongWith(next) ?? next;
}
