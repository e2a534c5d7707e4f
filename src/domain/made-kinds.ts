import type { DesignId, MasterId } from './brand.ts';
import { mouldsByDesign } from './by-design.ts';
import { isSameAs } from './lineage/kin.ts';
import type { Master, Mould, Shelf } from './shelf.ts';
import { designAndSize } from './title.ts';

/** A design in one size that comes out of a mould, and its share of the pieces of one shot. */
export interface MadeKind {
  readonly design: DesignId;
  readonly size?: string;
  readonly share: number;
}

/** All masters of a mould, each once. */
export function mastersOf(mould: Mould): readonly MasterId[] {
  return [...new Set([...(mould.master ? [mould.master] : []), ...(mould.masters ?? [])])];
}

/**
 * What a mould makes: its own design and size; one of several masters, a plate, what each of them is. A master that does not say its design or size has the
 * mould's. Which cavity is whose is written nowhere, so every master is taken to have as many as the others. Nothing is said of a mould without a design.
 */
export function kindsMade(shelf: Shelf, mould: Mould): readonly MadeKind[] {
  const masters = mould.masters?.length ? mastersOf(mould) : [];
  const own = mould.design ? kind(mould.design, mould.size, 1) : undefined;
  if (masters.length < 2) return own ? [own] : [];
  const kinds: MadeKind[] = [];
  for (const id of masters) {
    const master = shelf.things.master.get(id) as Master | undefined;
    const design = master?.design ?? mould.design;
    if (!design) continue;
    const size = master?.size ?? (design === mould.design ? mould.size : undefined);
    const at = kinds.findIndex((each) => each.design === design && each.size === size);
    const before = kinds[at];
    if (before) kinds[at] = { ...before, share: before.share + 1 / masters.length };
    else kinds.push(kind(design, size, 1 / masters.length));
  }
  return kinds.length > 0 || !own ? kinds : [own];
}

const kind = (design: DesignId, size: string | undefined, share: number): MadeKind => ({
  design,
  ...(size === undefined ? {} : { size }),
  share,
});

/** The share of a mould's pieces that are of this design and size; of any size where none is asked for. */
export function shareMade(shelf: Shelf, mould: Mould, design: DesignId, size: string | undefined): number {
  return kindsMade(shelf, mould).reduce(
    (sum, each) => sum + (each.design === design && (size === undefined || each.size === size) ? each.share : 0),
    0,
  );
}

/** “Owl, large and Fox”. */
export function kindsInWords(shelf: Shelf, kinds: readonly Pick<MadeKind, 'design' | 'size'>[]): string {
  const names = kinds.map(({ design, size }) => designAndSize(shelf, design, size) ?? 'a design no longer recorded');
  return names.length < 2 ? (names[0] ?? 'this piece') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

interface Plates {
  readonly maps: readonly unknown[];
  readonly byDesign: ReadonlyMap<DesignId, readonly Mould[]>;
}
const known: { last?: Plates } = {};
const joined = new WeakMap<readonly Mould[], { readonly own: readonly Mould[]; readonly all: readonly Mould[] }>();
const NONE: readonly Mould[] = [];

/** Moulds that make a design, plates of several masters included, retired ones too. The very same list as long as none of them changed. */
export function mouldsMaking(shelf: Shelf, design: DesignId): readonly Mould[] {
  const own = mouldsByDesign(shelf).get(design) ?? NONE;
  const plates = platesByDesign(shelf).get(design);
  if (!plates) return own;
  const before = joined.get(plates);
  if (before?.own === own) return before.all;
  const all = [...own, ...plates].sort((a, b) => (a.id < b.id ? -1 : 1));
  joined.set(plates, { own, all });
  return all;
}

/** Plates by what they make besides their own design. */
export function platesByDesign(shelf: Shelf): Plates['byDesign'] {
  const maps = [shelf.things.mould, shelf.things.master];
  if (known.last && isSameAs(known.last.maps, maps)) return known.last.byDesign;
  const found = new Map<DesignId, Mould[]>();
  for (const mould of shelf.things.mould.values() as Iterable<Mould>) {
    if (!mould.masters?.length) continue;
    for (const design of new Set(kindsMade(shelf, mould).map((each) => each.design))) {
      if (design === mould.design) continue;
      const list = found.get(design);
      if (list) list.push(mould);
      else found.set(design, [mould]);
    }
  }
  const before = known.last?.byDesign;
  const byDesign = new Map<DesignId, readonly Mould[]>(found);
  for (const [design, list] of found) {
    const was = before?.get(design);
    if (isSameAs(was, list)) byDesign.set(design, was as readonly Mould[]);
  }
  known.last = { maps, byDesign };
  return byDesign;
}
