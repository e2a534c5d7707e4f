import { mastersByDesign } from './by-design.ts';
import { kindsMade, type MadeKind, mastersOf, mouldsMaking } from './made-kinds.ts';
import type { Master, Mould, Shelf } from './shelf.ts';
import { through } from './slices.ts';

/** Nothing is known against their being of the same size. */
export const isSameSize = (a: string | undefined, b: string | undefined) => a === undefined || b === undefined || a === b;

/** Whether waxes can still be had from a mould. */
export const isLivingMould = (mould: Mould) => !mould.retired && mould.grade !== 'failed';

/** Whether a mould can still be made from a master, be it a worn one. */
export const isUsableMaster = (master: Master) =>
  !master.retired && master.state !== 'broken' && master.state !== 'lost' && master.grade !== 'failed';

/** Masters a mould of this design and size can be made from, sound ones before worn ones. */
export function usableMasters(shelf: Shelf, design: Mould['design'], size: string | undefined): readonly Master[] {
  if (!design) return [];
  const wear = (master: Master) => (master.state === 'worn' || master.grade === 'worn' ? 1 : 0);
  return (mastersByDesign(shelf).get(design) ?? [])
    .filter((master) => isUsableMaster(master) && isSameSize(master.size, size))
    .sort((a, b) => wear(a) - wear(b) || (a.id < b.id ? -1 : 1));
}

/**
 * The kinds a mould is the last of: it is the one living mould that makes them, intermediate ones counted, and there is no master to make another from.
 * When it goes, they are lost. Nothing is said of a mould without a design.
 */
export function kindsLeftTo(shelf: Shelf, mould: Mould): readonly MadeKind[] {
  if (!isLivingMould(mould)) return [];
  return kindsMade(shelf, mould).filter(({ design, size }) => {
    const others = mouldsMaking(shelf, design).some(
      (other) =>
        other.id !== mould.id &&
        isLivingMould(other) &&
        kindsMade(shelf, other).some((each) => each.design === design && isSameSize(each.size, size)),
    );
    if (others || usableMasters(shelf, design, size).length > 0) return false;
    // Its own masters serve too, as long as they do not say that they are something else.
    return !mastersOf(mould).some((id) => {
      const master = shelf.things.master.get(id) as Master | undefined;
      const isIt = (master?.design ?? design) === design && (master?.design === undefined || isSameSize(master.size, size));
      return master && isIt && isUsableMaster(master);
    });
  });
}

export function isLastOfItsKind(shelf: Shelf, mould: Mould): boolean {
  return kindsLeftTo(shelf, mould).length > 0;
}

const MOULDS_AT_ONCE = 100;

/** Every mould that is the last of its kind, a slice at a time. */
export function* lastInSlices(shelf: Shelf): Generator<void, readonly Mould[]> {
  const last: Mould[] = [];
  let looked = 0;
  for (const mould of shelf.things.mould.values() as Iterable<Mould>) {
    looked += 1;
    if (looked % MOULDS_AT_ONCE === 0) yield;
    if (isLastOfItsKind(shelf, mould)) last.push(mould);
  }
  return last;
}

/** Every mould that is the last of its kind. */
export function lastOfTheirKind(shelf: Shelf): readonly Mould[] {
  return through(lastInSlices(shelf));
}
