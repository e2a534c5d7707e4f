import { fieldWord } from '../field-words.ts';
import { FIELDS } from '../fields.ts';
import { isStanding } from '../filling.ts';
import { childrenOf } from '../nesting.ts';
import { NOUNS, type Noun } from '../noun.ts';
import type { Place, Shelf, Thing } from '../shelf.ts';
import { NOUNS_WORD } from '../title.ts';
import { writeNumber } from './exact-cell.ts';
import { columnsOf, type Target } from './targets.ts';
import { guardedWhole, writeTable } from './write.ts';
import { namedIn, placeWithPath, WRITTEN } from './written-columns.ts';

export interface StudioList {
  readonly name: string;
  readonly text: string;
}

/** In the order they come back in: each refers to the ones before it. */
const COME_BACK = ['place', 'design', 'master', 'wax', 'mould'] as const satisfies readonly Target[];

/** Units of figures, by the end of the field's name: always these, whatever the screens show, so that nothing is rounded on the way. */
const UNIT_BY_END: readonly (readonly [RegExp, string])[] = [
  [/grams$/i, 'g'],
  [/Mm$/, 'mm'],
  [/Kpa$/, 'kPa'],
  [/[a-z]C$/, '°C'],
  [/holdS$/, 's'],
  [/Days$/, 'days'],
];

/** How a word of ours is spelt: headings and the names of files, never what is in the lists. */
type Spell = (text: string) => string;
const asItIs: Spell = (text) => text;

/** The whole studio as CSV, one list a noun: the numbered ones come back in by *Bring in my list*, in that order; the others are for reading. */
export function studioLists(shelf: Shelf, spell = asItIs): readonly StudioList[] {
  const back = COME_BACK.map((noun, i) => ({ name: `${i + 1}-${spell(fileWord(noun))}.csv`, text: listOf(shelf, noun, spell) }));
  const others = NOUNS.filter((noun) => !(COME_BACK as readonly Noun[]).includes(noun)).map((noun) => ({
    name: `${spell(fileWord(noun))}.csv`,
    text: readingList(shelf, noun, spell),
  }));
  return [...back, ...others];
}

const fileWord = (noun: Noun) => NOUNS_WORD[noun].replaceAll(' ', '-');

/** One noun's list, under the headings that *Bring in my list* knows. */
export function listOf(shelf: Shelf, noun: Target, spell = asItIs): string {
  const columns = columnsOf(noun);
  const written = Object.entries(WRITTEN[noun] as Readonly<Record<string, ((thing: Thing, shelf: Shelf) => string | undefined) | null>>);
  const taken = written.flatMap(([key, write]) => (write ? [{ key, write }] : []));
  const codes = new Set<string>();
  const rows = thingsOf(shelf, noun).map((thing) => {
    // Two phones may have drawn the same code; a list can give it to one thing only.
    const isTwice = thing.code !== undefined && codes.has(thing.code);
    if (thing.code) codes.add(thing.code);
    return taken.map(({ key, write }) => (key === 'number' && isTwice ? '' : (write(thing, shelf) ?? '')));
  });
  return sheet([taken.map(({ key }) => spell(withUnit(columns[key]?.label ?? key, key))), ...rows]);
}

/** Places with what they stand in before them, so that a list names nothing that only comes later. */
function thingsOf(shelf: Shelf, noun: Noun): readonly Thing[] {
  if (noun !== 'place') return [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()];
  const children = childrenOf(shelf);
  const ordered: Place[] = [...(children.get(undefined) ?? [])];
  for (const place of ordered) ordered.push(...(children.get(place.id) ?? []));
  return ordered;
}

/** Everything known of the things of a noun, for people and other programs. */
function readingList(shelf: Shelf, noun: Noun, spell: Spell): string {
  const keys = Object.keys(FIELDS[noun]);
  const hasPieces = noun === 'injectedWax' || noun === 'casting';
  const extra = [...(isStanding(noun) ? ['Stands in'] : []), ...(hasPieces ? ['Pieces'] : []), 'Out of use', 'Out of use since'];
  const rows = thingsOf(shelf, noun).map((thing) => [
    ...keys.map((key) => valueText(shelf, (thing as unknown as Record<string, unknown>)[key])),
    ...(isStanding(noun) ? [placeWithPath(shelf, thing.at)] : []),
    ...(hasPieces && 'pieces' in thing ? [writeNumber(thing.pieces ?? 0)] : []),
    thing.retired?.reason ?? '',
    thing.retired?.on ?? '',
  ]);
  return sheet([[...keys.map((key) => spell(withUnit(fieldWord(noun, key), key))), ...extra], ...rows]);
}

function valueText(shelf: Shelf, value: unknown): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return writeNumber(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const ids = Array.isArray(value) ? value : [value];
  return namedIn(shelf, ids) || ids.join('; ');
}

function withUnit(label: string, key: string): string {
  const unit = UNIT_BY_END.find(([end]) => end.test(key))?.[1];
  return unit === undefined ? label : `${label} (${unit})`;
}

/** Line ends inside a cell are all of one kind: a list read again cannot tell them apart. */
function sheet(rows: readonly (readonly string[])[]): string {
  return `\ufeff${writeTable(rows.map((row) => row.map((cell) => guardedWhole(cell.replace(/\r\n?/g, '\n')))))}`;
}
