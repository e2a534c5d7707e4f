import type { DesignId, Millimetres } from './brand.ts';
import { SIZE_MAX } from './design.ts';
import { day, listOf, NAME_MAX, NOTE_MAX, number, oneOf, ref, text } from './field.ts';
import { labelCode } from './label.ts';

export const MASTER_KINDS = ['original', 'carved', 'dressed wax', 'print', 'casting'] as const;
export const MASTER_STATES = ['sound', 'worn', 'broken', 'lost'] as const;

export const MASTER_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  design: ref<DesignId>(),
  size: text(SIZE_MAX),
  kind: oneOf(MASTER_KINDS),
  state: oneOf(MASTER_STATES),
  material: text(60),
  made: day,
  /** What it came from: a mould (its wax, dressed), a casting, another master. Several when it was built from pieces. */
  from: listOf(ref<string>(), 20),
  lengthMm: number<Millimetres>(0.1, 5000),
  note: text(NOTE_MAX),
} as const;
