import type { PlaceId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { sayCount } from '../measure-words.ts';
import { sayNouns } from '../noun-counts.ts';
import type { Problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { titleOf } from '../title.ts';
import { unconfirmed } from '../warning.ts';
import { allWritten } from './written.ts';

export interface Withdraw {
  readonly entry: Entry;
  /** Every entry of the action it belongs to. */
  readonly whole: readonly Entry[];
  readonly confirmed?: boolean | undefined;
}

/** Takes back the action an entry belongs to: all of it, since half an action is a state nobody chose. */
export function planWithdraw(shelf: Shelf, desk: Desk, { entry, whole, confirmed }: Withdraw): readonly Entry[] | Problem {
  const warning = unconfirmed(withdrawWarnings(shelf, entry, whole), confirmed);
  if (warning) return warning;
  return allWritten([{ ...desk.entry(), kind: 'withdrawn', entry: entry.step ?? entry.id }]);
}

/** What would be left in the air if an entry were taken back now. */
function withdrawWarnings(shelf: Shelf, entry: Entry, whole: readonly Entry[]): readonly string[] {
  const recorded = whole.flatMap(({ kind, id }) => (kind === 'recorded' ? (thingOf(shelf, id) ?? []) : []));
  if (recorded.length > 1) {
    const together = `All that was recorded in the same go would go out of sight: ${sayNouns(recorded.map(({ noun }) => noun))}.`;
    return [together, ...leftInTheAir(shelf, recorded, whole)];
  }
  if (entry.kind === 'recorded') return leftInTheAir(shelf, recorded, whole);
  if (entry.kind === 'injected' && entry.good > 0) {
    const pile = thingOf(shelf, entry.onto ?? entry.id);
    if (pile?.noun === 'injectedWax' && pile.pieces < entry.good) {
      if (entry.good === 1) return ['The one wax this run made is no longer on hand: it has been used.'];
      const left = `${pile.pieces} ${pile.pieces === 1 ? 'is' : 'are'} still on hand`;
      return [`Of the ${entry.good} waxes this run made, ${left}; the others have been used.`];
    }
  }
  return [];
}

/** What later entries have put into recorded places, and logged with recorded moulds. */
function leftInTheAir(shelf: Shelf, recorded: readonly Thing[], whole: readonly Entry[]): readonly string[] {
  const warnings: string[] = [];
  const named = recorded.length === 1 ? titleOf(shelf, recorded[0]) : undefined;
  const ids = new Set<string>(recorded.map(({ id }) => id));
  const standing = recorded.flatMap(({ id }) => [...(shelf.contents.get(id as PlaceId) ?? [])]).filter((id) => !ids.has(id)).length;
  if (standing > 0)
    warnings.push(`${sayCount(standing, 'thing stands', 'things stand')} in ${named ?? 'its places'} and would have no place.`);
  const before = whole.reduce((sum, entry) => sum + (entry.kind === 'injected' ? entry.shots : 0), 0);
  const shots = recorded.reduce((sum, thing) => sum + (thing.noun === 'mould' ? thing.shots : 0), 0) - before;
  if (shots > 0)
    warnings.push(
      `${named ?? 'Its moulds'} ${named ? 'has' : 'have'} ${sayCount(shots, 'shot')} logged since, which would go out of sight with ${named ? 'it' : 'them'}.`,
    );
  return warnings;
}
