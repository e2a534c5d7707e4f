import type { Deps } from '../actions/deps.ts';

const KEY = 'recent places';
const KEPT = 6;

/** Places things were last put in on this device, newest first. */
export function recentPlaces({ settings, keeper }: Deps): readonly string[] {
  const kept = settings.get<unknown>(`${KEY}:${keeper.name}`);
  return Array.isArray(kept) ? kept.filter((each) => typeof each === 'string') : [];
}

export function rememberPlace(deps: Deps, id: string | undefined): void {
  if (!id) return;
  const others = recentPlaces(deps).filter((each) => each !== id);
  deps.settings.set(`${KEY}:${deps.keeper.name}`, [id, ...others].slice(0, KEPT));
}
