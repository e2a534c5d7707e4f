import type { DesignId } from './brand.ts';
import { METALS, SIZE_MAX } from './design.ts';
import { day, NAME_MAX, NOTE_MAX, oneOf, ref, text, whole } from './field.ts';
import { labelCode } from './label.ts';

/** Castings somebody is waiting for. */
export const WANT_FIELDS = {
  code: labelCode,
  name: text(NAME_MAX),
  design: ref<DesignId>(),
  size: text(SIZE_MAX),
  metal: oneOf(METALS),
  pieces: whole(1, 1_000_000),
  due: day,
  who: text(NAME_MAX),
  note: text(NOTE_MAX),
} as const;
