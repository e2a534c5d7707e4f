import { dayInWords } from './day-words.ts';
import { doubtInWords } from './doubt.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import type { Thing } from './shelf.ts';

/** Pieces marked for a look because their mould failed. */
export function doubtFlags(thing: Thing, rules: Rules): readonly Flag[] {
  if (thing.noun !== 'injectedWax' && thing.noun !== 'casting' && thing.noun !== 'flask') return [];
  const { doubt } = thing;
  if (!doubt) return [];
  const pieces = thing.noun === 'flask' ? (thing.invested?.waxes ?? []).reduce((sum, lot) => sum + lot.pieces, 0) : thing.pieces;
  if (pieces <= 0) return [];
  const which = doubtInWords({ least: Math.min(doubt.least, pieces), most: Math.min(doubt.most, pieces) }, pieces);
  const says = `Marked on ${dayInWords(doubt.on)}: ${which} came from a mould when it may have been failing.`;
  return [flagOn(thing, rules, 'doubtful', 'soon', says, 'Look at them, and say on its page that they were looked at.')];
}
