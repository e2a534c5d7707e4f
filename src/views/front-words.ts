import type { FlagKind } from '../domain/entry.ts';
import { STANDING } from '../domain/filling.ts';
import { NOUN_WORD, NOUNS_WORD } from '../domain/title.ts';
import type { Front } from './front.ts';
import type { PlaceMark } from './place-mark.ts';

/** A mark as a word that can follow a number: “2 worn”. */
const MARK_WORD: Readonly<Record<FlagKind, string>> = {
  failed: 'failed',
  doubtful: 'marked for a look',
  worn: 'worn',
  faults: 'faulty',
  'old shots': 'near its last shots',
  'old rubber': 'of old rubber',
  rejects: 'with many rejects',
  'look due': 'due a look',
  'wax low': 'wax low',
  'wax wrong': 'wax wrong this month or next',
  'over-full': 'over-full',
  stray: 'stray',
  'out late': 'out late',
  'stock low': 'low stock',
  'master unsound': 'unsound master',
};

/** “2 worn”; a drawer itself is just “over-full”. */
export function markInWords({ kind, count }: PlaceMark): string {
  if (kind === 'master unsound' && count > 1) return `${count} unsound masters`;
  return kind === 'over-full' && count === 1 ? 'over-full' : `${count} ${MARK_WORD[kind]}`;
}

/** “14 moulds, 2 masters”, or that it is empty. */
export function countsInWords({ counts }: Pick<Front, 'counts'>): string {
  const parts = STANDING.flatMap((noun) => {
    const count = counts[noun];
    return count ? [`${count} ${count === 1 ? NOUN_WORD[noun] : NOUNS_WORD[noun]}`] : [];
  });
  return parts.length > 0 ? parts.join(', ') : 'empty';
}

/** What a front says to somebody who cannot see it: “Drawer A3, Minoan, 14 moulds, 1 worn”. */
export function frontInWords(front: Front): string {
  const kind = front.kind.charAt(0).toUpperCase() + front.kind.slice(1);
  const named = front.label.toLowerCase().includes(front.kind) ? front.label : `${kind} ${front.label}`;
  return [named, ...front.periods, countsInWords(front), ...front.marks.map(markInWords)].join(', ');
}
