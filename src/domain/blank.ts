import { FIELDS, type Fields } from './fields.ts';
import { NOUNS, type Noun } from './noun.ts';
import type { Thing } from './shelf.ts';

/** What the shelf adds to the fields of a noun: all that one of its things may have. */
type Added<N extends Noun> = { readonly [K in Exclude<keyof Thing<N>, keyof Fields<N>>]-?: undefined };

const none = undefined;
const STANDING = {
  at: none,
  atSince: none,
  usual: none,
  until: none,
  pictures: none,
  looks: none,
  retired: none,
  aside: none,
  measured: none,
};
const BEGUN = { id: none, noun: none, since: none };
const GRADED = { grade: none, gradeOn: none, gradeNote: none, faults: none, nextLook: none };
const RUNS = { shots: none, good: none, rejects: none, runs: none, byFault: none, drift: none, sound: none, scrap: none };
const PIECES = { pieces: none, countedOn: none };

const ADDED: { readonly [N in Noun]: Added<N> } = {
  place: { ...BEGUN, ...STANDING },
  period: { ...BEGUN, ...STANDING },
  design: { ...BEGUN, ...STANDING },
  master: { ...BEGUN, ...STANDING, ...GRADED },
  mould: { ...BEGUN, ...STANDING, ...GRADED, ...RUNS },
  wax: { ...BEGUN, ...STANDING, grams: none, used: none, weighedOn: none },
  injector: { ...BEGUN, ...STANDING },
  injectedWax: { ...BEGUN, ...STANDING, ...PIECES },
  casting: { ...BEGUN, ...STANDING, ...PIECES, scrap: none, issued: none },
  flask: { ...BEGUN, ...STANDING, invested: none },
  want: { ...BEGUN, ...STANDING },
};

const blanks = Object.fromEntries(
  NOUNS.map((noun) => [noun, { ...BEGUN, ...Object.fromEntries(Object.keys(FIELDS[noun]).map((field) => [field, none])), ...ADDED[noun] }]),
) as unknown as { readonly [N in Noun]: object };

/**
 * A thing of which nothing is known yet: every field it may ever have, in one order, none filled in. All things of a noun begin so. Had each only
 * the fields it needs, in the order in which they came to it, 5,000 moulds would be 2,000 forms of object to the browser, and summing a
 * journal takes twice as long.
 */
export function blank(noun: Noun): object {
  return { ...blanks[noun] };
}
