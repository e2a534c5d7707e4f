import type { DesignId, PeriodId, PlaceId, WaxId } from './brand.ts';
import { fold } from './folding.ts';
import { pathText } from './nesting.ts';
import { NOUNS, type Noun } from './noun.ts';
import type { Shelf, Thing } from './shelf.ts';
import { NOUN_WORD, titleOf } from './title.ts';

/** A thing as a search sees it. */
export interface SearchDocument {
  readonly thing: Thing;
  readonly title: string;
  /** Folded title, with a blank before it, so that “starts a word” is one look for blank + word. */
  readonly name: string;
  /** Everything it is found by, folded, with a blank before it. */
  readonly text: string;
  /** Failed or taken out of use: listed last. */
  readonly isSpent: boolean;
  /** The words that come from other things (its design, periods, place, wax), by which it is seen whether they still hold. */
  readonly borrowed: string;
}

export interface SearchIndex {
  /** Moulds and places first, each noun by title. */
  readonly documents: readonly SearchDocument[];
  /** Every word there is, for those who misspell; made when first asked for. */
  vocabulary(): ReadonlySet<string>;
}

/** Order in which equally good finds are listed. */
const ORDER: readonly Noun[] = ['mould', 'place', ...NOUNS.filter((noun) => noun !== 'mould' && noun !== 'place')];

const documentOf = new WeakMap<Thing, SearchDocument>();
const indexes = new WeakMap<Shelf['things'], SearchIndex>();

/** The index of a shelf. Documents of things that did not change, nor what they borrow words from, are taken over. */
export function searchIndexOf(shelf: Shelf): SearchIndex {
  const known = indexes.get(shelf.things);
  if (known) return known;
  const lend = lenderOf(shelf);
  const documents: SearchDocument[] = [];
  for (const noun of ORDER) {
    const ofNoun: SearchDocument[] = [];
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) ofNoun.push(makeDocument(shelf, thing, lend(thing)));
    ofNoun.sort(byName);
    for (const document of ofNoun) documents.push(document);
  }
  let words: Set<string> | undefined;
  const index = { documents, vocabulary: () => (words ??= vocabularyOf(documents)) };
  indexes.set(shelf.things, index);
  return index;
}

function byName(a: SearchDocument, b: SearchDocument): number {
  return a.name < b.name ? -1 : a.name > b.name ? 1 : a.thing.id < b.thing.id ? -1 : 1;
}

function makeDocument(shelf: Shelf, thing: Thing, borrowed: string): SearchDocument {
  const known = documentOf.get(thing);
  if (known && known.borrowed === borrowed) return known;
  const title = titleOf(shelf, thing);
  const name = ` ${fold(title)}`;
  const own = ownWords(thing);
  const text = `${name} ${fold(own)} ${borrowed}`;
  const isSpent = thing.retired !== undefined || ('grade' in thing && thing.grade === 'failed');
  const document = { thing, title, name, text, isSpent, borrowed };
  documentOf.set(thing, document);
  return document;
}

/** Fields of plain words, of whichever noun has them. */
const PLAIN = ['label', 'also', 'sort', 'code', 'size', 'colour', 'behaviour', 'holder', 'who', 'material', 'kind', 'rubber', 'metal', 'state', 'note'] as const;

function ownWords(thing: Thing): string {
  const fields = thing as Thing & { readonly [K in (typeof PLAIN)[number]]?: string };
  const words: string[] = [NOUN_WORD[thing.noun]];
  for (const key of PLAIN) {
    const value = fields[key];
    if (value !== undefined) words.push(value);
  }
  if (thing.noun === 'mould' && thing.purpose === 'intermediate') words.push('intermediate');
  if (thing.noun === 'design') words.push(...(thing.sizes ?? []).map((size) => size.label), ...(thing.metals ?? []));
  return words.join(' ');
}

/** Words a thing is found by that stand in other things' records. Each lender's words are put together once. */
function lenderOf(shelf: Shelf): (thing: Thing) => string {
  const { period, design, wax } = shelf.things;
  const periodWords = remembered<PeriodId>((id) => fold(`${period.get(id)?.name ?? ''} ${period.get(id)?.also ?? ''}`));
  const placeWords = remembered<PlaceId>((id) => fold(pathText(shelf, id)));
  const waxWords = remembered<WaxId>((id) => fold(`${wax.get(id)?.name ?? ''} ${wax.get(id)?.colour ?? ''}`));
  const designWords = remembered<DesignId>((id) => {
    const found = design.get(id);
    if (!found) return '';
    return [fold(`${found.name ?? ''} ${found.also ?? ''} ${found.sort ?? ''}`), ...(found.periods ?? []).map(periodWords)].join(' ');
  });
  return (thing) => {
    let words = '';
    if ('periods' in thing && thing.periods) words += thing.periods.map(periodWords).join(' ');
    if ('design' in thing && thing.design) words += ` ${designWords(thing.design)}`;
    if ('wax' in thing && thing.wax) words += ` ${waxWords(thing.wax)}`;
    if (thing.noun === 'injector' && thing.holds) words += ` ${waxWords(thing.holds)}`;
    const place = thing.noun === 'place' ? thing.in : thing.at;
    if (place) words += ` ${placeWords(place)}`;
    return words;
  };
}

function remembered<K>(make: (key: K) => string): (key: K) => string {
  const made = new Map<K, string>();
  return (key) => {
    let value = made.get(key);
    if (value === undefined) {
      value = make(key);
      made.set(key, value);
    }
    return value;
  };
}

/** Words with a digit are codes, sizes and drawers: those are not guessed at. */
function vocabularyOf(documents: readonly SearchDocument[]): Set<string> {
  const words = new Set<string>();
  for (const { text } of documents) {
    for (const word of text.split(' ')) if (word.length >= 3) words.add(word);
  }
  for (const word of words) if (/\d/.test(word)) words.delete(word);
  return words;
}
