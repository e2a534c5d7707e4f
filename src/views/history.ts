import type { EntryId, PlaceId, Sha256, ThingId, WaxId } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import type { Entry } from '../domain/entry.ts';
import { FIELD_WORDS } from '../domain/field-words.ts';
import { sayCount, sayLength, sayMass, sayPressure, sayTemperature } from '../domain/measure-words.ts';
import { pathText } from '../domain/nesting.ts';
import { type Shelf, thingOf } from '../domain/shelf.ts';
import { subjectOf } from '../domain/subject.ts';
import { NOUN_WORD, titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';

/** One line of a thing's history, readable by somebody who was not there. */
export interface HistoryLine {
  readonly id: EntryId;
  readonly day: string;
  readonly by?: string;
  readonly says: string;
  readonly note?: string;
  readonly pictures: readonly Sha256[];
  readonly entry: Entry;
}

/** `of` is the thing whose history it is: a line about another one, which only names it, says about which. */
export function historyOf(shelf: Shelf, entries: readonly Entry[], units: Units, of?: ThingId): readonly HistoryLine[] {
  const gone = new Set<Sha256>();
  return entries.map((entry) => ({
    id: entry.id,
    day: dayInWords(entry.on),
    ...(entry.by ? { by: entry.by } : {}),
    says: aboutAnother(shelf, entry, of, saysOf(shelf, entry, units)),
    ...(entry.note ? { note: entry.note } : {}),
    pictures: stillOn(entry, gone),
    entry,
  }));
}

function aboutAnother(shelf: Shelf, entry: Entry, of: ThingId | undefined, says: string): string {
  const subject = subjectOf(entry);
  if (!of || !subject || subject === of || (entry.kind === 'moved' && (entry.things as readonly string[]).includes(of))) return says;
  const thing = thingOf(shelf, subject);
  const named = thing ? `${NOUN_WORD[thing.noun]} “${titleOf(shelf, thing)}”` : titleOf(shelf, thing);
  return `${named.charAt(0).toUpperCase()}${named.slice(1)}: ${says.charAt(0).toLowerCase()}${says.slice(1)}`;
}

/** Of an entry's pictures those that nobody took off later; entries are asked newest first. */
function stillOn(entry: Entry, gone: Set<Sha256>): readonly Sha256[] {
  const shown = (entry.pictures ?? []).filter((picture) => !gone.has(picture));
  if (entry.kind === 'corrected' && entry.noun !== 'studio') for (const picture of entry.without ?? []) gone.add(picture);
  return shown;
}

function counted(parts: { readonly [what: string]: number | undefined } | undefined): string {
  return Object.entries(parts ?? {})
    .map(([what, count]) => `${count} ${what}`)
    .join(', ');
}

const place = (shelf: Shelf, id: PlaceId | undefined) => pathText(shelf, id) || 'a place that is no longer recorded';
const inWax = (shelf: Shelf, id: WaxId | undefined) => {
  const wax = id && shelf.things.wax.get(id);
  return wax ? ` in ${titleOf(shelf, wax)}` : id ? ' in a wax that is no longer recorded' : '';
};
const list = (words: readonly string[] | undefined) => (words?.length ? `: ${words.join(', ')}` : '');

function saysOf(shelf: Shelf, entry: Entry, units: Units): string {
  switch (entry.kind) {
    case 'recorded':
      return `Recorded${entry.at ? ` in ${place(shelf, entry.at)}` : ''}.`;
    case 'corrected':
      return correctedSays(entry);
    case 'moved':
      return movedSays(shelf, entry);
    case 'injected':
      return injectedSays(shelf, entry, units);
    case 'inspected':
      return `Looked at and found ${entry.grade}${list(entry.faults)}.${entry.next ? ` Next look by ${dayInWords(entry.next)}.` : ''}`;
    case 'failed':
      return `Failed${list(entry.faults)}.`;
    case 'retired':
      return `Retired: ${entry.reason}.`;
    case 'received':
      return `Received ${sayMass(entry.grams, units)}${entry.lot ? `, lot ${entry.lot}` : ''}.`;
    case 'weighed':
      return `Weighed: ${sayMass(entry.grams, units)} left.`;
    case 'counted':
      return `Counted: ${sayCount(entry.pieces, 'piece')}.`;
    case 'dressed':
      return `${entry.good} dressed${entry.scrapped ? `, ${entry.scrapped} thrown out` : ''}.`;
    case 'invested':
      return `Invested ${sayCount(
        entry.waxes.reduce((sum, lot) => sum + lot.pieces, 0),
        'wax',
        'waxes',
      )}.`;
    case 'cast':
      return `Cast in ${entry.metal}: ${entry.sound} sound${entry.scrap ? `; scrap: ${counted(entry.scrap)}` : ''}.`;
    case 'measured':
      return `Measured${entry.sizes?.length ? `: ${entry.sizes.map((size) => `${size.name} ${sayLength(size.mm, units)}`).join(', ')}` : ''}${entry.grams ? `, ${sayMass(entry.grams, units)}` : ''}.`;
    case 'issued':
      return `${entry.pieces ? sayCount(entry.pieces, 'piece') : entry.grams ? sayMass(entry.grams, units) : 'Some'} ${entry.reason}${entry.to ? ` to ${entry.to}` : ''}.`;
    case 'withdrawn':
      return 'Took an entry back.';
  }
}

function correctedSays(entry: Extract<Entry, { kind: 'corrected' }>): string {
  if ('doubt' in entry.fields)
    return entry.fields.doubt ? 'Marked for a look: its mould was failing.' : 'Looked at, and no longer in doubt.';
  const fields = Object.keys(entry.fields).map((field) => FIELD_WORDS[field] ?? field);
  if (fields.length > 0) return `Put right: ${fields.map((word) => word.toLocaleLowerCase()).join(', ')}.`;
  if ('aside' in entry && entry.aside) {
    const said = Object.entries(entry.aside).map(([flag, until]) =>
      until ? `“${flag}” set aside until ${dayInWords(until)}` : `“${flag}” taken up again`,
    );
    return `${said.join('; ')}.`;
  }
  if ('without' in entry && entry.without) return `Took ${sayCount(entry.without.length, 'picture')} off.`;
  if ('first' in entry && entry.first) return 'Chose another picture to be known by.';
  return entry.pictures?.length ? `Added ${sayCount(entry.pictures.length, 'picture')}.` : 'Put right.';
}

function movedSays(shelf: Shelf, entry: Extract<Entry, { kind: 'moved' }>): string {
  const to = shelf.things.place.get(entry.to);
  const others = entry.things.length > 1 ? ` with ${sayCount(entry.things.length - 1, 'other thing')}` : '';
  const until = entry.until ? ` until ${dayInWords(entry.until)}` : '';
  if (to?.kind === 'away') return `Lent to ${to.holder ?? titleOf(shelf, to)}${until}${others}.`;
  return `Moved to ${place(shelf, entry.to)}${entry.usual === 'kept' ? ' for a while' : ''}${until}${others}.`;
}

function injectedSays(shelf: Shelf, entry: Extract<Entry, { kind: 'injected' }>, units: Units): string {
  const rejects = counted(entry.rejects);
  const shots = `${sayCount(entry.shots, 'shot')}${inWax(shelf, entry.wax)}`;
  if (entry.good === 0 && !rejects) return `${shots}; how many of the waxes were good is not known.`;
  const settings = [
    ...(entry.waxC === undefined ? [] : [sayTemperature(entry.waxC, units)]),
    ...(entry.pressureKpa === undefined ? [] : [sayPressure(entry.pressureKpa, units)]),
    ...(entry.holdS === undefined ? [] : [`${entry.holdS} s`]),
  ];
  const where = entry.good > 0 && entry.to ? ` The waxes went to ${place(shelf, entry.to)}.` : '';
  return (
    `${shots}: ${sayCount(entry.good, 'good wax', 'good waxes')}` +
    `${rejects ? `; rejects: ${rejects}` : ', no rejects'}${settings.length > 0 ? ` (${settings.join(', ')})` : ''}.${where}`
  );
}
