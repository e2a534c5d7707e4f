import type { Celsius } from './brand.ts';
import { METALS } from './design.ts';
import { type FieldsOf, flag, NAME_MAX, number, oneOf, recordOf, shape, text, whole } from './field.ts';
import { RUBBERS } from './mould.ts';

export const HEMISPHERES = ['north', 'south'] as const;
export type Hemisphere = (typeof HEMISPHERES)[number];
export const MONTHS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12'] as const;

const monthTemperatures = shape({ lowC: number<Celsius>(-40, 60), highC: number<Celsius>(-40, 60) }, ['lowC', 'highC']);
const lifeOfRubber = shape({ shots: whole(1, 1_000_000), years: number(0.1, 200) });

/** The steps a piece loses size in. */
export const ALLOWANCE_KEYS = [...RUBBERS, 'wax', 'dressing', ...METALS] as const;
export type AllowanceKey = (typeof ALLOWANCE_KEYS)[number];
/** Linear %, and one standard deviation of it. */
const allowance = shape({ percent: number(-5, 30), spread: number(0.01, 20) });

/** What holds for the whole studio. `months`, `life` and `allowance` merge key by key. */
export const STUDIO_FIELDS = {
  name: text(NAME_MAX),
  hemisphere: oneOf(HEMISPHERES),
  /** The workshop's usual low and high in each month, °C. */
  months: recordOf(MONTHS, monthTemperatures),
  /** Expected life of each rubber, where the studio's figure differs from the default. */
  life: recordOf(RUBBERS, lifeOfRubber),
  /** How much smaller each step makes a piece, where the studio's figure differs from the default. */
  allowance: recordOf(ALLOWANCE_KEYS, allowance),
  /** Days without a look after which a mould in use is due one. */
  lookDays: whole(1, 3650),
  /** Address put before a code in a label's link form. */
  labelAddress: text(200),
  usesLinks: flag,
} as const;
export type StudioFields = FieldsOf<typeof STUDIO_FIELDS>;
