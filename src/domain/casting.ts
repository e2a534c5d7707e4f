import type { DesignId, FlaskId, MouldId } from './brand.ts';
import { METALS, SIZE_MAX } from './design.ts';
import { doubt } from './doubt.ts';
import { day, NAME_MAX, NOTE_MAX, oneOf, ref, text } from './field.ts';
import { labelCode } from './label.ts';

/** A pile of like castings kept in one place. */
export const CASTING_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  design: ref<DesignId>(),
  size: text(SIZE_MAX),
  metal: oneOf(METALS),
  mould: ref<MouldId>(),
  flask: ref<FlaskId>(),
  doubt,
  note: text(NOTE_MAX),
} as const;
