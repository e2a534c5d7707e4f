import type { PlaceId } from '../domain/brand.ts';
import { piecesIn } from '../domain/filling.ts';
import { sayMass } from '../domain/measure-words.ts';
import { placesWithin } from '../domain/nesting.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { designBeside, NOUN_WORD, titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';

/** What a thing is in a few words, besides its title: its kind, design, size, how many, how much. */
export function detailOf(shelf: Shelf, thing: Thing, units?: Units): readonly string[] {
  const parts: (string | undefined)[] = [
    thing.noun === 'place' ? (thing.kind ?? 'place') : NOUN_WORD[thing.noun],
    designBeside(shelf, thing),
  ];
  if (thing.noun === 'place' || thing.noun === 'design')
    parts.push(...(thing.periods ?? []).map((id) => shelf.things.period.get(id)?.name));
  if (thing.noun === 'place') parts.push(piecesWithin(shelf, thing.id));
  if ('size' in thing && thing.size && !titleOf(shelf, thing).includes(thing.size)) parts.push(thing.size);
  if (thing.noun === 'injectedWax') parts.push(thing.state);
  if (thing.noun === 'injectedWax' || thing.noun === 'casting' || thing.noun === 'want') parts.push(pieces(thing.pieces ?? 0));
  if (thing.noun === 'casting' || thing.noun === 'want') parts.push(thing.metal);
  if (thing.noun === 'master') parts.push(thing.kind);
  if (thing.noun === 'wax') parts.push(sayMass(thing.grams, units));
  return parts.filter((part) => part !== undefined && part !== '') as string[];
}

/** Of what stands in a place and in the places inside it: a cabinet's pieces lie in its drawers. */
function piecesWithin(shelf: Shelf, id: PlaceId): string {
  const count = placesWithin(shelf, id).reduce((sum, each) => sum + piecesIn(shelf, each), 0);
  return count === 0 ? 'empty' : pieces(count);
}

function pieces(count: number): string {
  return count === 1 ? '1 piece' : `${count} pieces`;
}
