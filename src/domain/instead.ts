import type { MouldId } from './brand.ts';
import type { Grade } from './grade.ts';
import { expectedLife } from './life.ts';
import { pathText } from './nesting.ts';
import type { Master, Mould, Shelf } from './shelf.ts';
import { designAndSize } from './title.ts';

/** What to use in place of a mould that cannot be used. */
export interface Instead {
  /** Other moulds of the design and size that can be used, the best first. */
  readonly moulds: readonly Mould[];
  /** Masters a new mould can be made from; only looked for when there is no such mould. */
  readonly masters: readonly Master[];
  /** The answer as a sentence. */
  readonly says: string;
}

/** A mould nobody has looked at comes after one found sound. */
const ORDER: Readonly<Record<Grade | 'unseen', number>> = { sound: 0, unseen: 1, watch: 2, worn: 3, failed: 4 };

/** Share of its expected life a mould has used, by shots; 0 for a rubber without a figure. */
function used(shelf: Shelf, mould: Mould): number {
  const life = expectedLife(mould, shelf.studio).shots?.value;
  return life ? mould.shots / life : 0;
}

export function insteadOf(shelf: Shelf, id: MouldId): Instead {
  const mould = shelf.things.mould.get(id);
  if (!mould) return { moulds: [], masters: [], says: 'This mould is no longer recorded.' };
  const moulds = otherMoulds(shelf, mould);
  const what = designAndSize(shelf, mould.design, mould.size) ?? 'this piece';
  const [best] = moulds;
  if (best) {
    const where = pathText(shelf, best.at);
    const count = moulds.length === 1 ? 'There is another mould' : `There are ${moulds.length} other moulds`;
    return { moulds, masters: [], says: `${count} of ${what}.${where ? ` The best one is in ${where}.` : ''}` };
  }
  const masters = mastersFor(shelf, mould);
  const [first] = masters;
  if (first) {
    const where = pathText(shelf, first.at);
    const state = first.state ? `, ${first.state}` : '';
    const says = `No other mould of ${what} can be used. A new one can be made from its master${state}${where ? `, in ${where}` : ''}.`;
    return { moulds, masters, says };
  }
  return { moulds, masters, says: `There is no other mould of ${what}, and no master to make one from.` };
}

function otherMoulds(shelf: Shelf, mould: Mould): readonly Mould[] {
  const isLike = likeness(mould);
  const others = [...shelf.things.mould.values()].filter(
    (other) => other.id !== mould.id && isLike(other) && other.purpose !== 'intermediate' && !other.retired && other.grade !== 'failed',
  );
  const keyed = others.map((other) => ({ other, order: ORDER[other.grade ?? 'unseen'], share: used(shelf, other) }));
  return keyed.sort((a, b) => a.order - b.order || a.share - b.share || (a.other.id < b.other.id ? -1 : 1)).map(({ other }) => other);
}

/** The same design and size; where no design was written down, the same master. */
function likeness(mould: Mould): (other: Mould) => boolean {
  if (mould.design) return (other) => other.design === mould.design && other.size === mould.size;
  if (mould.master) return (other) => other.master === mould.master;
  return () => false;
}

/** Its own master first, then others of the design and size; broken, lost and failed ones are none. */
function mastersFor(shelf: Shelf, mould: Mould): readonly Master[] {
  const own = new Set([mould.master, ...(mould.masters ?? [])]);
  const rank = (master: Master) => (own.has(master.id) ? 0 : 2) + (master.state === 'worn' || master.grade === 'worn' ? 1 : 0);
  return [...shelf.things.master.values()]
    .filter((master) => own.has(master.id) || (mould.design !== undefined && master.design === mould.design && master.size === mould.size))
    .filter((master) => master.state !== 'broken' && master.state !== 'lost' && master.grade !== 'failed' && !master.retired)
    .sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}
