import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { isProblem, type Problem } from '../problem.ts';
import type { Shelf } from '../shelf.ts';
import { ALLOWANCE_KEYS, type AllowanceKey, DEFAULT_ALLOWANCE } from '../size/allowance.ts';
import { STUDIO_FIELDS } from '../studio.ts';
import { allWritten } from './written.ts';

/** A step's figures; one left out goes by the default. */
export interface OwnAllowance {
  readonly percent?: number | undefined;
  readonly spread?: number | undefined;
}

export interface SetAllowances {
  /** Steps left out stay as they are. */
  readonly allowance: { readonly [K in AllowanceKey]?: OwnAllowance };
}

/** The studio's own figures of how much each step takes. What is wrong is told beside “STEP percent” and “STEP spread”. Only what differs is written. */
export function planAllowances(shelf: Shelf, desk: Desk, { allowance }: SetAllowances): readonly Entry[] | Problem {
  const wrong: Record<string, string> = {};
  const changed: { [K in AllowanceKey]?: OwnAllowance } = {};
  for (const key of ALLOWANCE_KEYS) {
    const asked = allowance[key];
    if (!asked) continue;
    const now = shelf.studio.allowance?.[key];
    const own: { percent?: number; spread?: number } = {};
    for (const figure of ['percent', 'spread'] as const) {
      const value = asked[figure];
      // The default typed in again where the studio had no figure is still the default.
      if (value === undefined || (now?.[figure] === undefined && value === DEFAULT_ALLOWANCE[key][figure])) continue;
      if (isProblem(STUDIO_FIELDS.allowance({ [key]: { [figure]: value } }))) wrong[`${key} ${figure}`] = `${key}: ${RANGE[figure]}`;
      else own[figure] = value;
    }
    if (own.percent !== now?.percent || own.spread !== now?.spread) changed[key] = own;
  }
  if (Object.keys(wrong).length > 0) return formProblem(wrong);
  if (Object.keys(changed).length === 0) return [];
  return allWritten([{ ...desk.entry(), kind: 'corrected', noun: 'studio', fields: { allowance: changed } }]);
}

const RANGE = { percent: 'from −5 to 30 %.', spread: 'from 0.01 to 20 %.' } as const;
