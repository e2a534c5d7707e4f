import type { DesignId, MouldId, WaxId } from './brand.ts';
import { SIZE_MAX } from './design.ts';
import { doubt } from './doubt.ts';
import { day, NAME_MAX, NOTE_MAX, oneOf, ref, text } from './field.ts';
import { labelCode } from './label.ts';

export const WAX_STATES = ['raw', 'dressed'] as const;

/** A pile of like wax pieces kept in one place. */
export const INJECTED_WAX_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  mould: ref<MouldId>(),
  design: ref<DesignId>(),
  size: text(SIZE_MAX),
  wax: ref<WaxId>(),
  state: oneOf(WAX_STATES),
  doubt,
  note: text(NOTE_MAX),
} as const;
