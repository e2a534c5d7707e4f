import type { PlaceId } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { planOrderPlaces } from '../domain/plans/order-places.ts';
import type { Problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

/** Puts places in this order. */
export function orderPlaces({ keeper }: Pick<Deps, 'keeper'>, ids: readonly PlaceId[]): Promise<readonly Entry[] | Problem> {
  return keeper.act((shelf, desk) => planOrderPlaces(shelf, desk, ids));
}
