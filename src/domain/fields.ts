import { CASTING_FIELDS } from './casting.ts';
import { DESIGN_FIELDS } from './design.ts';
import type { ChangesOf, FieldsOf } from './field.ts';
import { FLASK_FIELDS } from './flask.ts';
import { INJECTED_WAX_FIELDS } from './injected-wax.ts';
import { INJECTOR_FIELDS } from './injector.ts';
import { MASTER_FIELDS } from './master.ts';
import { MOULD_FIELDS } from './mould.ts';
import type { Noun } from './noun.ts';
import { PERIOD_FIELDS } from './period.ts';
import { PLACE_FIELDS } from './place.ts';
import { WANT_FIELDS } from './want.ts';
import { WAX_FIELDS } from './wax.ts';

/** The fields a record of each noun may carry, each with its check. */
export const FIELDS = {
  place: PLACE_FIELDS,
  period: PERIOD_FIELDS,
  design: DESIGN_FIELDS,
  master: MASTER_FIELDS,
  mould: MOULD_FIELDS,
  wax: WAX_FIELDS,
  injector: INJECTOR_FIELDS,
  injectedWax: INJECTED_WAX_FIELDS,
  casting: CASTING_FIELDS,
  flask: FLASK_FIELDS,
  want: WANT_FIELDS,
} as const satisfies Record<Noun, object>;

export type Fields<N extends Noun> = FieldsOf<(typeof FIELDS)[N]>;
export type Changes<N extends Noun> = ChangesOf<(typeof FIELDS)[N]>;
