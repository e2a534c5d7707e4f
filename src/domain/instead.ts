import type { Day, MouldId } from './brand.ts';
import type { Grade } from './grade.ts';
import { isUsableMaster } from './last-of-kind.ts';
import { expectedLife, isAged, isSpentMould } from './life.ts';
import { pathText } from './nesting.ts';
import type { Master, Mould, Shelf } from './shelf.ts';
import { designAndSize } from './title.ts';

/** What to use in place of a mould that cannot be used. */
export interface Instead {
  /** Other moulds of the design, size and purpose that can be used, the best first. */
  readonly moulds: readonly Mould[];
  /** Worn ones, and those shot as often as they are expected to last; only looked for when there is no better. */
  readonly lastResort: readonly Mould[];
  /** Masters a new mould can be made from; only looked for when there is no good mould. */
  readonly masters: readonly Master[];
  /** The answer as a sentence. */
  readonly says: string;
}

/** A mould nobody has looked at comes after one found sound. */
const ORDER: Readonly<Record<Grade | 'unseen', number>> = { sound: 0, unseen: 1, watch: 2, worn: 3, failed: 4 };

/** How far a mould can be trusted; one whose rubber is past its years is watched, whatever was found when it was looked at. */
function orderOf(shelf: Shelf, mould: Mould, today: Day | undefined): number {
  const order = ORDER[mould.grade ?? 'unseen'];
  return today !== undefined && isAged(mould, shelf.studio, today) ? Math.max(order, ORDER.watch) : order;
}

/** Share of its expected life a mould has used, by shots; 0 for a rubber without a figure. */
function used(shelf: Shelf, mould: Mould): number {
  const life = expectedLife(mould, shelf.studio).shots?.value;
  return life ? mould.shots / life : 0;
}

/** The age of the rubber is reckoned with when the day is given. */
export function insteadOf(shelf: Shelf, id: MouldId, today?: Day): Instead {
  const mould = shelf.things.mould.get(id);
  if (!mould) return { moulds: [], lastResort: [], masters: [], says: 'This mould is no longer recorded.' };
  const others = otherMoulds(shelf, mould, today);
  const moulds = others.filter((other) => !isSpentMould(other, shelf.studio));
  const word = mould.purpose === 'intermediate' ? 'intermediate mould' : 'mould';
  const what = designAndSize(shelf, mould.design, mould.size) ?? 'this piece';
  const [best] = moulds;
  if (best) {
    const where = pathText(shelf, best.at);
    const count = moulds.length === 1 ? `There is another ${word}` : `There are ${moulds.length} other ${word}s`;
    return { moulds, lastResort: [], masters: [], says: `${count} of ${what}.${where ? ` The best one is in ${where}.` : ''}` };
  }
  const masters = mastersFor(shelf, mould);
  const [first] = masters;
  if (first) {
    const where = pathText(shelf, first.at);
    const state = first.state ? `, ${first.state}` : '';
    const none = others.length > 0 ? lastResortSays(others, word, what) : `No other ${word} of ${what} can be used.`;
    const says = `${none} A new one can be made from its master${state}${where ? `, in ${where}` : ''}.`;
    return { moulds, lastResort: others, masters, says };
  }
  const says =
    others.length > 0
      ? `${lastResortSays(others, word, what)} There is no master to make a new one from.`
      : `There is no other ${word} of ${what}, and no master to make one from.`;
  return { moulds, lastResort: others, masters, says };
}

function lastResortSays({ length }: readonly Mould[], word: string, what: string): string {
  return length === 1
    ? `The only other ${word} of ${what} is worn or past its expected shots: a last resort.`
    : `${length} other ${word}s of ${what} are left, all worn or past their expected shots: a last resort.`;
}

function otherMoulds(shelf: Shelf, mould: Mould, today: Day | undefined): readonly Mould[] {
  const isLike = likeness(mould);
  const others = [...shelf.things.mould.values()].filter(
    (other) =>
      other.id !== mould.id &&
      isLike(other) &&
      (other.purpose === 'intermediate') === (mould.purpose === 'intermediate') &&
      !other.retired &&
      other.grade !== 'failed',
  );
  const keyed = others.map((other) => ({ other, order: orderOf(shelf, other, today), share: used(shelf, other) }));
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
    .filter(isUsableMaster)
    .sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}
