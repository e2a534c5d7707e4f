import type { Day, MouldId } from './brand.ts';
import type { Grade } from './grade.ts';
import { isUsableMaster } from './last-of-kind.ts';
import { expectedLife, isAged, isSpentMould } from './life.ts';
import { kindsInWords, kindsMade, type MadeKind, mastersOf } from './made-kinds.ts';
import { pathText } from './nesting.ts';
import type { Master, Mould, Shelf } from './shelf.ts';

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
  const kinds = kindsMade(shelf, mould);
  const what = kindsInWords(shelf, kinds);
  const [best] = moulds;
  if (best) {
    const where = pathText(shelf, best.at);
    const count = moulds.length === 1 ? `There is another ${word}` : `There are ${moulds.length} other ${word}s`;
    const lacking = kinds.filter((kind) => !moulds.some((other) => makes(shelf, other, kind)));
    const rest = lacking.length > 0 ? restOf(shelf, mould, lacking) : { masters: [], says: '' };
    const made = kindsInWords(
      shelf,
      kinds.filter((kind) => !lacking.includes(kind)),
    );
    const says = `${count} of ${kinds.length > 0 ? made : what}.${where ? ` The best one is in ${where}.` : ''}${rest.says}`;
    return { moulds, lastResort: [], masters: rest.masters, says };
  }
  const masters = mastersFor(shelf, mould, kinds, true);
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

/** Of a plate that failed: what none of the others makes. */
function restOf(shelf: Shelf, mould: Mould, lacking: readonly MadeKind[]): Pick<Instead, 'masters' | 'says'> {
  const masters = mastersFor(shelf, mould, lacking, false);
  const what = kindsInWords(shelf, lacking);
  return {
    masters,
    says: ` None of them makes ${what}${masters.length > 0 ? ': its masters are below.' : ', and there is no master of it.'}`,
  };
}

function lastResortSays({ length }: readonly Mould[], word: string, what: string): string {
  return length === 1
    ? `The only other ${word} of ${what} is worn or past its expected shots: a last resort.`
    : `${length} other ${word}s of ${what} are left, all worn or past their expected shots: a last resort.`;
}

function otherMoulds(shelf: Shelf, mould: Mould, today: Day | undefined): readonly Mould[] {
  const isLike = likeness(shelf, mould);
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

/** The same design and size, be it only some of what a plate makes; where no design was written down, the same master. */
function likeness(shelf: Shelf, mould: Mould): (other: Mould) => boolean {
  const kinds = kindsMade(shelf, mould);
  if (kinds.length > 0) return (other) => kinds.some((kind) => makes(shelf, other, kind));
  if (mould.master) return (other) => other.master === mould.master;
  return () => false;
}

const isIt = (a: Pick<MadeKind, 'design' | 'size'>, b: Pick<MadeKind, 'design' | 'size'>) => a.design === b.design && a.size === b.size;
const makes = (shelf: Shelf, mould: Mould, kind: MadeKind) => kindsMade(shelf, mould).some((each) => isIt(each, kind));

/** Its own master first, then others of the design and size; broken, lost and failed ones are none. */
function mastersFor(shelf: Shelf, mould: Mould, kinds: readonly MadeKind[], isAll: boolean): readonly Master[] {
  const own = new Set<string>(mastersOf(mould));
  const rank = (master: Master) => (own.has(master.id) ? 0 : 2) + (master.state === 'worn' || master.grade === 'worn' ? 1 : 0);
  const isOf = ({ design, size }: Master, among: readonly MadeKind[]) =>
    design !== undefined && among.some((kind) => isIt(kind, { design, ...(size === undefined ? {} : { size }) }));
  return [...shelf.things.master.values()]
    .filter((master) => (own.has(master.id) && (isAll || master.design === undefined || isOf(master, kinds))) || isOf(master, kinds))
    .filter(isUsableMaster)
    .sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}
