import type { Day } from '../../src/domain/brand.ts';
import { toBase32 } from '../../src/domain/crockford.ts';
import { NOUNS, type Noun } from '../../src/domain/noun.ts';
import { contentsOf, EMPTY_SHELF, type Shelf, type Thing, type Things } from '../../src/domain/shelf.ts';

/** The id written as a short name in a test: the same name, the same id, in the shape of an entry's id. */
export function idOf<I extends string = string>(name: string): I {
  let number = 7;
  for (const character of name) number = (number * 37 + (character.codePointAt(0) ?? 0)) % 2 ** 40;
  return toBase32(number, 18) as I;
}

export type Made = { readonly noun: Noun; readonly is: string; readonly at?: string; readonly [field: string]: unknown };

/** A thing as a shelf has it; `is` and `at` are short names. Its default numbers all differ. */
function aThing({ noun, is, at, ...fields }: Made): Thing {
  const tallies = noun === 'mould' ? { shots: 31, good: 29, rejects: 2 } : noun === 'wax' ? { grams: 840 } : { pieces: 17 };
  const hasTally = ['mould', 'wax', 'injectedWax', 'casting'].includes(noun);
  return {
    id: idOf(is),
    noun,
    since: '2024-03-05' as Day,
    ...(at === undefined ? {} : { at: idOf(at), atSince: '2024-03-06' }),
    ...(hasTally ? tallies : {}),
    ...fields,
  } as unknown as Thing;
}

/** A shelf with these things on it, made without a journal. */
export function shelfOf(made: readonly Made[]): Shelf {
  const things = Object.fromEntries(NOUNS.map((noun) => [noun, new Map<string, Thing>()]));
  for (const each of made) {
    const thing = aThing(each);
    things[thing.noun]?.set(thing.id, thing);
  }
  return { ...EMPTY_SHELF, things: things as unknown as Things, contents: contentsOf(things as unknown as Things) };
}
