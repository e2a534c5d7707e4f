import type { Celsius, Grams, Kilopascals } from './brand.ts';
import { day, NAME_MAX, NOTE_MAX, number, oneOf, text, whole } from './field.ts';
import { labelCode } from './label.ts';

/** What a wax is for. Sticky wax only holds pieces in place and is not injected. */
export const WAX_USES = ['injecting', 'sticky'] as const;
/** Which injectors take it: `needs high` belongs in the high-pressure injector only. */
export const WAX_PRESSURES = ['any', 'needs high', 'low only'] as const;

export const WAX_FIELDS = {
  code: labelCode,
  labelled: day,
  name: text(NAME_MAX),
  colour: text(40),
  /** How it behaves, in the studio's words. */
  behaviour: text(400),
  use: oneOf(WAX_USES),
  pressure: oneOf(WAX_PRESSURES),
  /** Room temperatures it works in: below, brittle; above, too soft. The studio's own figures. */
  roomLowC: number<Celsius>(-30, 60),
  roomHighC: number<Celsius>(-30, 60),
  injectLowC: number<Celsius>(20, 150),
  injectHighC: number<Celsius>(20, 150),
  pressureLowKpa: number<Kilopascals>(0, 1000),
  pressureHighKpa: number<Kilopascals>(0, 1000),
  /** Days from ordering to having it. */
  deliveryDays: whole(0, 730),
  /** Order when this little is left, whatever the use. */
  keepGrams: number<Grams>(0, 10_000_000),
  note: text(NOTE_MAX),
} as const;
