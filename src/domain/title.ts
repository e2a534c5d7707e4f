import type { Noun } from './noun.ts';
import { type Shelf, type Thing, thingOf } from './shelf.ts';

/** What each kind of thing is called in a sentence. */
export const NOUN_WORD: Readonly<Record<Noun, string>> = {
  place: 'place',
  period: 'period',
  design: 'design',
  master: 'master',
  mould: 'mould',
  wax: 'wax',
  injector: 'injector',
  injectedWax: 'injected wax',
  casting: 'casting',
  flask: 'flask',
  want: 'want',
};

/** Whole words for several of a kind. */
export const NOUNS_WORD: Readonly<Record<Noun, string>> = {
  place: 'places',
  period: 'periods',
  design: 'designs',
  master: 'masters',
  mould: 'moulds',
  wax: 'waxes',
  injector: 'injectors',
  injectedWax: 'injected waxes',
  casting: 'castings',
  flask: 'flasks',
  want: 'wants',
};

/** Design and size, such as “Owl seal, large”; the design's name alone when no size was written. */
export function designAndSize(shelf: Shelf, design: string | undefined, size: string | undefined): string | undefined {
  const name = thingOf(shelf, design)?.name;
  if (!name) return size;
  return size ? `${name}, ${size}` : name;
}

/** What a thing is called: its own name, else its design and size, else its code, else what kind of thing it is. */
export function titleOf(shelf: Shelf, thing: Thing | undefined): string {
  if (!thing) return 'something that is no longer recorded';
  if (thing.name) return thing.name;
  const designed = 'design' in thing ? designAndSize(shelf, thing.design, thing.size) : undefined;
  if (designed)
    return thing.noun === 'injectedWax' && thing.wax ? `${designed}, in ${titleOf(shelf, shelf.things.wax.get(thing.wax))}` : designed;
  return thing.code ?? `${NOUN_WORD[thing.noun]} without a name`;
}

export function titleOfId(shelf: Shelf, id: string | undefined): string {
  return titleOf(shelf, thingOf(shelf, id));
}

/** The name of a thing's design where the thing has a name of its own that does not say it, such as a number. */
export function designBeside(shelf: Shelf, thing: Thing): string | undefined {
  if (!thing.name || !('design' in thing) || !thing.design) return undefined;
  const name = shelf.things.design.get(thing.design)?.name;
  return name && !thing.name.toLowerCase().includes(name.toLowerCase()) ? name : undefined;
}
