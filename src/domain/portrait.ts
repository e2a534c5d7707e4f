import type { Sha256 } from './brand.ts';
import type { Shelf, Thing } from './shelf.ts';

/** The one picture a thing is known by: its own first one, else its design's. A picture of what went wrong with it never is. */
export function portraitOf(shelf: Shelf, thing: Thing): Sha256 | undefined {
  return thing.pictures?.[0] ?? designOf(shelf, thing)?.pictures?.[0];
}

/** All pictures of a thing, its portrait first, those of what happened to it last. */
export function picturesOf(shelf: Shelf, thing: Thing): readonly Sha256[] {
  const portrait = portraitOf(shelf, thing);
  return [...new Set([...(portrait ? [portrait] : []), ...(thing.pictures ?? []), ...(thing.looks ?? [])])];
}

function designOf(shelf: Shelf, thing: Thing): Thing<'design'> | undefined {
  return 'design' in thing && thing.design !== undefined ? shelf.things.design.get(thing.design) : undefined;
}
