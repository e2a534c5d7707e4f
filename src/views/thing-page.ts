import type { Sha256, ThingId } from '../domain/brand.ts';
import { FIELD_WORDS } from '../domain/field-words.ts';
import { FIELDS } from '../domain/fields.ts';
import { isStanding } from '../domain/filling.ts';
import type { Flag } from '../domain/flag.ts';
import { pathText } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import { picturesOf } from '../domain/portrait.ts';
import { type Shelf, type Thing, thingOf } from '../domain/shelf.ts';
import { NOUN_WORD, titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { spanInYears } from '../domain/year.ts';
import { fieldInWords } from './field-says.ts';
import { type OnFront, onFront } from './front-of.ts';
import type { Fact } from './mould-facts.ts';
import { type Row, rowOf } from './place-page.ts';
import { relatedTo } from './related.ts';
import { type State, statesOf } from './state.ts';

/** Things that belong with another, under one heading. */
export interface Related {
  readonly heading: string;
  readonly rows: readonly Row[];
}

export interface ThingPage {
  readonly id: ThingId;
  readonly noun: Noun;
  readonly what: string;
  readonly title: string;
  readonly states: readonly State[];
  readonly flags: readonly Flag[];
  readonly pictures: readonly Sha256[];
  /** Where it stands; absent for what has no place of its own. */
  readonly stands?: { readonly path: string; readonly front: OnFront | null };
  readonly facts: readonly Fact[];
  readonly note?: string;
  readonly related: readonly Related[];
}

/** Nouns that stand somewhere and can be moved. */
/** Shown elsewhere on the page, or of no use to read. */
const HIDDEN: readonly string[] = ['name', 'note', 'order', 'doubt'];

/** Everything about a thing that has no screen of its own; undefined when there is none. */
export function thingPage(shelf: Shelf, id: string, units: Units, flagsTo: (id: string) => readonly Flag[]): ThingPage | undefined {
  const thing = thingOf(shelf, id);
  if (!thing) return undefined;
  return {
    id: thing.id,
    noun: thing.noun,
    what: NOUN_WORD[thing.noun],
    title: titleOf(shelf, thing),
    states: statesOf(shelf, thing),
    flags: flagsTo(id),
    pictures: picturesOf(shelf, thing),
    ...(isStanding(thing.noun) ? { stands: { path: pathText(shelf, thing.at), front: onFront(shelf, thing.at) } } : {}),
    facts: factsOf(shelf, thing, units),
    ...(thing.note ? { note: thing.note } : {}),
    related: relatedTo(shelf, thing)
      .map(({ heading, things }) => ({ heading, rows: things.map((each) => rowOf(shelf, each, flagsTo, units)) }))
      .filter(({ rows }) => rows.length > 0),
  };
}

function factsOf(shelf: Shelf, thing: Thing, units: Units): readonly Fact[] {
  const facts: Fact[] = [];
  const add = (name: string, says: string) => {
    if (says !== '') facts.push({ name, says });
  };
  if (thing.noun === 'injectedWax' || thing.noun === 'casting') add('Pieces', String(thing.pieces));
  if (thing.noun === 'wax') add('Left', fieldInWords(shelf, 'keepGrams', thing.grams, units));
  if (thing.noun === 'period') add('Span', spanInYears(thing.from, thing.to));
  for (const key of Object.keys(FIELDS[thing.noun])) {
    const value = (thing as unknown as Record<string, unknown>)[key];
    const isHidden = HIDDEN.includes(key) || (thing.noun === 'period' && (key === 'from' || key === 'to'));
    if (value === undefined || isHidden) continue;
    add(FIELD_WORDS[key] ?? key, fieldInWords(shelf, key, value, units));
  }
  if (thing.retired) add('Out of use', `${thing.retired.reason}, ${fieldInWords(shelf, 'made', thing.retired.on, units)}`);
  return facts;
}
