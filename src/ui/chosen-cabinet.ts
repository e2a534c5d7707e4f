import type { Deps } from '../actions/deps.ts';
import type { Fronts } from '../views/fronts.ts';

/** The tab of what stands in no cabinet. */
export const ELSEWHERE = 'elsewhere';

type Kept = Deps['settings'];

/** Which cabinet of a studio was looked at last is kept under this name. */
export const keyOf = (studio: string) => `cabinet:${studio}`;
export const chosenBefore = (settings: Kept, studio: string) => settings.get<string>(keyOf(studio)) ?? '';

/** The cabinet that is shown: the one chosen, or the first when that is there no more. */
export function currentOf({ cabinets }: Fronts, chosen: string): string {
  return cabinets.find(({ id }) => id === chosen)?.id ?? (chosen === ELSEWHERE ? ELSEWHERE : (cabinets[0]?.id ?? ELSEWHERE));
}

/** The cabinet that a drawer is in, if any. */
export function cabinetOf({ cabinets }: Fronts, drawer: string): string | undefined {
  return drawer === '' ? undefined : cabinets.find(({ fronts }) => fronts.some(({ id }) => id === drawer))?.id;
}
