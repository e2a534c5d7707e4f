import type { Year } from './brand.ts';
import { NAME_MAX, NOTE_MAX, number, text, whole } from './field.ts';
import { labelCode } from './label.ts';

export const PERIOD_FIELDS = {
  code: labelCode,
  name: text(NAME_MAX),
  /** First and last year, astronomical (600 BC is −599), both included; a topic without a span has neither. */
  from: whole<Year>(-100_000, 9999),
  to: whole<Year>(-100_000, 9999),
  /** Other names it is looked for under. */
  also: text(400),
  order: number(-1e6, 1e6),
  note: text(NOTE_MAX),
} as const;
