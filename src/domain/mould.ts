import type { Celsius, DesignId, Grams, Kilopascals, MasterId, WaxId } from './brand.ts';
import { SIZE_MAX } from './design.ts';
import { day, type FieldsOf, listOf, NAME_MAX, NOTE_MAX, number, oneOf, ref, shape, text, whole } from './field.ts';
import { labelCode } from './label.ts';

export const PURPOSES = ['production', 'intermediate'] as const;
export const RUBBERS = ['natural', 'vulcanised silicone', 'platinum silicone', 'tin silicone'] as const;
export type Rubber = (typeof RUBBERS)[number];

/** Further masters one mould may name. */
export const MASTERS_MAX = 60;

export const INJECTION_FIELDS = {
  waxC: number<Celsius>(20, 150),
  pressureKpa: number<Kilopascals>(0, 1000),
  /** Seconds the pressure is held. */
  holdS: number(0, 600),
} as const;
/** How wax is injected into a mould. */
export const injection = shape(INJECTION_FIELDS);
export type Injection = FieldsOf<typeof INJECTION_FIELDS>;

export const MOULD_FIELDS = {
  code: labelCode,
  /** Day a label was printed and put on. */
  labelled: day,
  name: text(NAME_MAX),
  design: ref<DesignId>(),
  size: text(SIZE_MAX),
  master: ref<MasterId>(),
  /** Further masters, for a mould of several cavities. */
  masters: listOf(ref<MasterId>(), MASTERS_MAX),
  purpose: oneOf(PURPOSES),
  rubber: oneOf(RUBBERS),
  cavities: whole(1, 500),
  made: day,
  /** Wax used by one shot, sprue included. */
  shotGrams: number<Grams>(0, 100_000),
  wax: ref<WaxId>(),
  injection,
  /** Shots it is expected to last, when the rubber's own figure does not fit. */
  expectedShots: whole(1, 1_000_000),
  note: text(NOTE_MAX),
} as const;
export type MouldFields = FieldsOf<typeof MOULD_FIELDS>;
