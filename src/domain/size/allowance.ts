import { ALLOWANCE_KEYS, type AllowanceKey, type StudioFields } from '../studio.ts';

/** How much smaller a step makes a piece, linear %, and one standard deviation of that. */
export interface Allowance {
  readonly percent: number;
  readonly spread: number;
}

interface DefaultAllowance extends Allowance {
  readonly source: string;
}

/** Where a studio has no figure of its own. Spreads are judged from how far the sources lie apart. */
export const DEFAULT_ALLOWANCE: Readonly<Record<AllowanceKey, DefaultAllowance>> = {
  natural: { percent: 2, spread: 1.2, source: 'rubber makers’ own figures, 0–4 % (flexiblejewelrymolds.com)' },
  'vulcanised silicone': { percent: 1.7, spread: 0.3, source: 'two makes, 1.6 and 1.8 % (flexiblejewelrymolds.com)' },
  'platinum silicone': { percent: 0.1, spread: 0.1, source: 'from memory: under 0.1 %' },
  'tin silicone': { percent: 1, spread: 0.4, source: '0.8–1.2 % (trollfactory.de); it goes on shrinking with age (reynoldsam.com)' },
  wax: { percent: 2.5, spread: 0.8, source: 'one casting house (artistryofgold.com); rods measured 1.2–3.4 % (PMC11876593)' },
  dressing: { percent: 0.3, spread: 0.3, source: 'common practice, no source' },
  pewter: { percent: 1.43, spread: 0.3, source: '11/64 inch a foot (Numismatic dictionary, nnp.library.wustl.edu)' },
  bronze: { percent: 1.56, spread: 0.3, source: '3/16 inch a foot, 1.5–2 % a recast (Numismatic dictionary, nnp.library.wustl.edu)' },
  brass: { percent: 1.56, spread: 0.3, source: '3/16 inch a foot (Dooley, Applied Science for Metal Workers)' },
  silver: { percent: 1.3, spread: 0.3, source: 'from memory: 1.0–1.6 %' },
  gold: { percent: 1.45, spread: 0.25, source: 'from memory: 1.2–1.7 %' },
};

/** A rubber or metal that nobody wrote down: as wide as those known lie apart. From memory. */
export const UNKNOWN_RUBBER: Allowance = { percent: 1.2, spread: 1 };
export const UNKNOWN_METAL: Allowance = { percent: 1.4, spread: 0.4 };

export interface FoundAllowance extends Allowance {
  /** Where it comes from, to be shown beside it. */
  readonly from: string;
  readonly isOwn: boolean;
}

/** The studio's own figure, else the default. */
export function allowanceFor(studio: StudioFields, key: AllowanceKey): FoundAllowance {
  const own = studio.allowance?.[key];
  const { percent, spread, source } = DEFAULT_ALLOWANCE[key];
  const isOwn = own?.percent !== undefined || own?.spread !== undefined;
  return { percent: own?.percent ?? percent, spread: own?.spread ?? spread, from: isOwn ? 'the studio’s figure' : source, isOwn };
}

export { ALLOWANCE_KEYS, type AllowanceKey };
