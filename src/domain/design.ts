import type { Grams, Millimetres, PeriodId } from './brand.ts';
import { day, listOf, NAME_MAX, NOTE_MAX, number, oneOf, ref, shape, text, whole } from './field.ts';
import { labelCode } from './label.ts';

export const ROUTES = ['lost wax', 'poured in the mould'] as const;
export const METALS = ['pewter', 'bronze', 'brass', 'silver', 'gold'] as const;
export type Metal = (typeof METALS)[number];

export const SIZE_MAX = 40;

/** Periods one design may be of. */
export const PERIODS_MAX = 20;

export const DESIGN_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  /** What sort of piece: seal, toggle, brooch … in the studio's own words. */
  sort: text(60),
  periods: listOf(ref<PeriodId>(), PERIODS_MAX),
  /** The sizes it is made in, each with the length it is known by. */
  sizes: listOf(shape({ label: text(SIZE_MAX), mm: number<Millimetres>(0.1, 5000) }, ['label']), 60),
  metals: listOf(oneOf(METALS), METALS.length),
  route: oneOf(ROUTES),
  /** Wax in one piece without its sprue. */
  waxGrams: number<Grams>(0, 100_000),
  /** Castings to keep on hand. */
  keep: whole(0, 1_000_000),
  also: text(400),
  note: text(NOTE_MAX),
} as const;
