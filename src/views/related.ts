import { type Shelf, type Thing, thingOf } from '../domain/shelf.ts';
import { isSpent } from '../domain/spent.ts';

export interface Kin {
  readonly heading: string;
  readonly things: readonly Thing[];
}

/** What belongs with a thing: the moulds, masters and piles of a design, what a master was made from and what came of it. */
export function relatedTo(shelf: Shelf, thing: Thing): readonly Kin[] {
  const { id } = thing;
  const { mould, master, injectedWax, casting, design, want, injector, place } = shelf.things;
  switch (thing.noun) {
    case 'design':
      return [
        { heading: 'Moulds', things: those(mould, (each) => each.design === id) },
        { heading: 'Masters', things: those(master, (each) => each.design === id) },
        { heading: 'Injected waxes', things: those(injectedWax, (each) => each.design === id && each.pieces > 0) },
        { heading: 'Castings', things: those(casting, (each) => each.design === id && each.pieces > 0) },
        { heading: 'Wanted', things: those(want, (each) => each.design === id) },
      ];
    case 'master':
      return [
        { heading: 'Of the design', things: named(shelf, [thing.design]) },
        { heading: 'Made from', things: named(shelf, thing.from ?? []) },
        { heading: 'Moulds made from it', things: those(mould, (each) => each.master === id || each.masters?.includes(thing.id) === true) },
        { heading: 'Masters made from it', things: those(master, (each) => each.from?.includes(id) === true) },
      ];
    case 'period':
      return [
        { heading: 'Drawers that keep it', things: those(place, (each) => each.periods?.includes(thing.id) === true) },
        { heading: 'Designs', things: those(design, (each) => each.periods?.includes(thing.id) === true) },
      ];
    case 'wax':
      return [
        { heading: 'In the injector', things: those(injector, (each) => each.holds === id) },
        { heading: 'Moulds that want it', things: those(mould, (each) => each.wax === id) },
        { heading: 'Injected waxes', things: those(injectedWax, (each) => each.wax === id && each.pieces > 0) },
      ];
    case 'injectedWax':
    case 'casting':
      return [
        { heading: 'Where it comes from', things: named(shelf, [thing.mould, thing.design]) },
        { heading: 'Masters made from it', things: those(master, (each) => each.from?.includes(id) === true) },
      ];
    case 'injector':
      return [{ heading: 'Filled with', things: named(shelf, [thing.holds]) }];
    case 'want':
      return [
        { heading: 'Of the design', things: named(shelf, [thing.design]) },
        { heading: 'Castings on hand', things: those(casting, (each) => each.design === thing.design && each.pieces > 0) },
      ];
    default:
      return [];
  }
}

function those<T extends Thing>(things: ReadonlyMap<string, T>, isOne: (thing: T) => boolean): readonly T[] {
  const found: T[] = [];
  for (const thing of things.values()) if (isOne(thing)) found.push(thing);
  return found.sort((a, b) => Number(isSpent(a)) - Number(isSpent(b)));
}

function named(shelf: Shelf, ids: readonly (string | undefined)[]): readonly Thing[] {
  return ids.flatMap((id) => thingOf(shelf, id) ?? []);
}
