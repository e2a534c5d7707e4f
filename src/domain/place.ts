import type { PeriodId, PlaceId } from './brand.ts';
import { day, flag, listOf, NAME_MAX, NOTE_MAX, number, oneOf, ref, shape, text, whole } from './field.ts';
import { labelCode } from './label.ts';

export const PLACE_KINDS = ['room', 'cabinet', 'drawer', 'shelf', 'box', 'away'] as const;

/** What a place is meant to hold; a stray is a thing of another kind or period. */
export const PLACE_FOR = ['moulds', 'masters', 'injected waxes', 'castings', 'wax', 'anything'] as const;

const MM_MAX = 20_000;

/** Periods one place may be meant for. */
export const PLACE_PERIODS_MAX = 40;

export const PLACE_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  kind: oneOf(PLACE_KINDS),
  /** The place this one stands in. */
  in: ref<PlaceId>(),
  /** What the label on the front says, when shorter than the name. */
  label: text(24),
  periods: listOf(ref<PeriodId>(), PLACE_PERIODS_MAX),
  for: oneOf(PLACE_FOR),
  /** Pieces that fit. */
  capacity: whole(0, 100_000),
  /** Outside of a cabinet's front, mm. */
  widthMm: number(1, MM_MAX),
  heightMm: number(1, MM_MAX),
  /** Where a drawer's or shelf's front is on its cabinet's front: mm from its left and top edge. */
  box: shape({ x: number(0, MM_MAX), y: number(0, MM_MAX), w: number(1, MM_MAX), h: number(1, MM_MAX) }, ['x', 'y', 'w', 'h']),
  /** Order among its siblings. */
  order: number(-1e6, 1e6),
  /** An `away` place: who has the things. */
  holder: text(NAME_MAX),
  open: flag,
  note: text(NOTE_MAX),
} as const;
