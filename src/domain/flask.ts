import type { Millimetres } from './brand.ts';
import { METALS } from './design.ts';
import { doubt } from './doubt.ts';
import { day, NAME_MAX, NOTE_MAX, number, oneOf, text } from './field.ts';
import { labelCode } from './label.ts';

export const FLASK_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  metal: oneOf(METALS),
  diameterMm: number<Millimetres>(1, 2000),
  heightMm: number<Millimetres>(1, 2000),
  doubt,
  note: text(NOTE_MAX),
} as const;
