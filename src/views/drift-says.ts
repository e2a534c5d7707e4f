import type { Day, MouldId } from '../domain/brand.ts';
import type { WaxFault } from '../domain/fault.ts';
import { FAULT_CAUSES } from '../domain/fault-causes.ts';
import { flagOnRejects } from '../domain/flag-rejects.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { usualFor } from '../domain/usual-rejects.ts';

/** Said after a run when a mould spoils more than it used to: what to try first. Empty when all is as ever. */
export function driftSays(shelf: Shelf, id: MouldId, today: Day): string {
  const mould = shelf.things.mould.get(id) as Mould | undefined;
  if (!mould || !flagOnRejects(mould, { today, usual: usualFor(mould, shelf.things.mould) })) return '';
  const [worst] = (Object.entries(mould.byFault ?? {}) as [WaxFault, number][]).sort((a, b) => b[1] - a[1]);
  const first = worst && FAULT_CAUSES[worst[0]][0];
  return ` Its rejects are rising.${first ? ` For ${worst[0]}, try the ${first.look} first.` : ''}`;
}
