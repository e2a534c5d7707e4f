import type { DesignId, PeriodId, PlaceId, WaxId } from './brand.ts';
import { pathText } from './nesting.ts';
import type { Shelf, Thing } from './shelf.ts';
import { NOUN_WORD } from './title.ts';

/** Fields of plain words, of whichever noun has them. */
const PLAIN = [
  'name',
  'label',
  'also',
  'sort',
  'code',
  'size',
  'colour',
  'behaviour',
  'holder',
  'who',
  'material',
  'kind',
  'rubber',
  'metal',
  'state',
  'note',
] as const;

/** The texts of a thing's own record that it is found by, besides its title. */
export function ownTexts(thing: Thing): readonly string[] {
  const fields = thing as Thing & { readonly [K in (typeof PLAIN)[number]]?: string };
  const texts: string[] = [NOUN_WORD[thing.noun]];
  for (const key of PLAIN) {
    const value = fields[key];
    if (value !== undefined) texts.push(value);
  }
  if (thing.noun === 'mould' && thing.purpose === 'intermediate') texts.push('intermediate');
  if (thing.noun === 'design') texts.push(...(thing.sizes ?? []).map((size) => size.label), ...(thing.metals ?? []));
  return texts;
}

/** Hands over the words a thing is found by that stand in other things' records: its design, periods, wax and place. Each lender is read once. */
export function lenderOf(
  shelf: Shelf,
  numbersOf: (text: string) => readonly number[],
): (thing: Thing, take: (words: readonly number[]) => void) => void {
  const { period, design, wax } = shelf.things;
  const periodWords = once<PeriodId>((id) => numbersOf(`${period.get(id)?.name ?? ''} ${period.get(id)?.also ?? ''}`));
  const placeWords = once<PlaceId>((id) => numbersOf(pathText(shelf, id)));
  const waxWords = once<WaxId>((id) => numbersOf(`${wax.get(id)?.name ?? ''} ${wax.get(id)?.colour ?? ''}`));
  const designWords = once<DesignId>((id) => {
    const found = design.get(id);
    if (!found) return [];
    return [...numbersOf(`${found.name ?? ''} ${found.also ?? ''} ${found.sort ?? ''}`), ...(found.periods ?? []).flatMap(periodWords)];
  });
  return (thing, take) => {
    if ('periods' in thing && thing.periods) for (const id of thing.periods) take(periodWords(id));
    if ('design' in thing && thing.design) take(designWords(thing.design));
    if ('wax' in thing && thing.wax) take(waxWords(thing.wax));
    if (thing.noun === 'injector' && thing.holds) take(waxWords(thing.holds));
    const place = thing.noun === 'place' ? thing.in : thing.at;
    if (place) take(placeWords(place));
  };
}

function once<K>(make: (key: K) => readonly number[]): (key: K) => readonly number[] {
  const made = new Map<K, readonly number[]>();
  return (key) => {
    let value = made.get(key);
    if (value === undefined) {
      value = make(key);
      made.set(key, value);
    }
    return value;
  };
}
