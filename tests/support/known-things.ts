import type { Grams, PlaceId } from '../../src/domain/brand.ts';
import type { Recorded } from '../../src/domain/entry.ts';
import type { Noun } from '../../src/domain/noun.ts';
import type { Shelf, Thing } from '../../src/domain/shelf.ts';
import { aRecorded, SOME } from './entry-builders.ts';

/** The entry that records a thing under a made-up id, older than all others. */
export function known<N extends Noun>(noun: N, fields = {}, over = {}): Recorded<N> {
  return aRecorded(noun, fields as never, { id: SOME[noun], ...over } as never);
}

/** What is filled in of the thing of a noun, by default of the one under the made-up id. */
export function thing<N extends Noun>(shelf: Shelf, noun: N, id: string = SOME[noun]): Thing<N> {
  const found = (shelf.things[noun] as ReadonlyMap<string, Thing<N>>).get(id) as Thing<N>;
  return found && (Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined)) as unknown as Thing<N>);
}

export function contents(shelf: Shelf, place: string): string[] {
  return [...(shelf.contents.get(place as PlaceId) ?? [])];
}

export const mould = known('mould', { name: 'Dolphin 1', size: 'small', design: SOME.design, note: 'old' }, { at: SOME.place });
export const wax = known('wax', { name: 'Green' }, { grams: 500 as Grams });
export const pile = known('injectedWax', { state: 'raw', mould: SOME.mould, size: 'small' }, { pieces: 33, at: SOME.place });
