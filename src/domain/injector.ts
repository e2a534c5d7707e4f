import type { Kilopascals, WaxId } from './brand.ts';
import { day, NAME_MAX, NOTE_MAX, number, oneOf, ref, text } from './field.ts';
import { labelCode } from './label.ts';

export const INJECTOR_PRESSURES = ['hand', 'low', 'high'] as const;

/** What an injector works by, beside its name. */
export const PRESSURE_WORD: Readonly<Record<(typeof INJECTOR_PRESSURES)[number], string>> = {
  hand: 'worked by hand',
  low: 'low pressure',
  high: 'high pressure',
};

export const INJECTOR_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  pressure: oneOf(INJECTOR_PRESSURES),
  maxKpa: number<Kilopascals>(0, 2000),
  /** The wax it is filled with. */
  holds: ref<WaxId>(),
  note: text(NOTE_MAX),
} as const;
