import type { Code, PlaceId, ThingId } from '../domain/brand.ts';
import type { LabelWords } from '../domain/label-face.ts';
import { payloadOf } from '../domain/label-qr.ts';
import { labelOf, pathText, placesWithin } from '../domain/nesting.ts';
import { NOUNS, type Noun } from '../domain/noun.ts';
import { UNLABELLED } from '../domain/plans/label-things.ts';
import { type Place, type Shelf, type Thing, thingOf } from '../domain/shelf.ts';
import { isSpent } from '../domain/spent.ts';
import { designBeside, NOUN_WORD, titleOf } from '../domain/title.ts';
import { spanInYears } from '../domain/year.ts';

/** Kinds that are drawn with a shape of their own on labels. */
export type KindShape = Exclude<Noun, 'period' | 'want'> | 'intermediate';

export interface PrintedLabel {
  readonly id: ThingId;
  /** Undefined while the thing has no code yet. */
  readonly code?: Code;
  readonly words: LabelWords;
  readonly shape: KindShape;
  /** What the symbol says. */
  readonly payload: string;
}

/** What is printed for each of the things; those that carry no label, or are no longer recorded, are left out. */
export function labelsFor(shelf: Shelf, ids: readonly string[]): readonly PrintedLabel[] {
  return ids.flatMap((id) => {
    const thing = thingOf(shelf, id);
    return thing && !UNLABELLED.includes(thing.noun) ? [labelFor(shelf, thing)] : [];
  });
}

/** Stands for a code not yet drawn. */
const NO_CODE = '––––––––';

function labelFor(shelf: Shelf, thing: Thing): PrintedLabel {
  const { code } = thing;
  const isIntermediate = thing.noun === 'mould' && thing.purpose === 'intermediate';
  return {
    id: thing.id,
    ...(code ? { code } : {}),
    words: { code: code ?? NO_CODE, ...(thing.noun === 'place' ? frontWords(shelf, thing) : thingWords(shelf, thing)) },
    shape: isIntermediate ? 'intermediate' : (thing.noun as KindShape),
    payload: code ? payloadOf(code, shelf.studio) : '',
  };
}

type Words = Omit<LabelWords, 'code'>;

function thingWords(shelf: Shelf, thing: Thing): Words {
  const design = 'design' in thing ? thingOf(shelf, thing.design)?.name : undefined;
  const title = thing.name ?? design ?? titleOf(shelf, thing);
  const size = 'size' in thing && thing.size && !title.includes(thing.size) ? thing.size : '';
  const wax = thing.noun === 'injectedWax' && thing.wax ? `in ${titleOf(shelf, shelf.things.wax.get(thing.wax))}` : '';
  const metal = thing.noun === 'casting' || thing.noun === 'flask' ? (thing.metal ?? '') : '';
  return {
    name: title === thing.code ? '' : title,
    lines: [designBeside(shelf, thing) ?? '', size, wax, metal].filter((line) => line !== ''),
    kind: thing.noun === 'mould' && thing.purpose === 'intermediate' ? 'intermediate' : NOUN_WORD[thing.noun],
    isFront: false,
  };
}

function frontWords(shelf: Shelf, place: Place): Words {
  const periods = (place.periods ?? []).flatMap((id) => shelf.things.period.get(id) ?? []);
  const around = place.in === undefined ? '' : pathText(shelf, place.in);
  const lines = [
    periods.map((period) => titleOf(shelf, period)).join(', '),
    periods.length === 1 ? spanInYears(periods[0]?.from, periods[0]?.to) : '',
    place.label !== undefined && place.name !== undefined && place.name !== place.label ? place.name : '',
    place.name?.includes(around) ? '' : around,
  ];
  return { name: labelOf(shelf, place), lines: lines.filter((line) => line !== ''), kind: place.kind ?? 'place', isFront: true };
}

function carriesLabel(thing: Thing): boolean {
  return !UNLABELLED.includes(thing.noun) && !isSpent(thing) && !(thing.noun === 'place' && thing.kind === 'away');
}

/** Everything that stands in a place and the places inside it; the places come first. */
export function labelledIn(shelf: Shelf, place: PlaceId): readonly ThingId[] {
  const places = placesWithin(shelf, place);
  const things = places.flatMap((id) => [...(shelf.contents.get(id) ?? [])]);
  const inside: readonly ThingId[] = [...places.slice(1), ...things];
  return inside.filter((id) => {
    const thing = thingOf(shelf, id);
    return thing !== undefined && carriesLabel(thing);
  });
}

export interface NeverLabelled {
  readonly noun: Noun;
  readonly ids: readonly ThingId[];
}

/** Things in use of which nobody has written down that their label was printed, by kind. */
export function neverLabelled(shelf: Shelf): readonly NeverLabelled[] {
  return NOUNS.map((noun) => ({
    noun,
    ids: [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()]
      .filter((thing) => carriesLabel(thing) && !('labelled' in thing && thing.labelled !== undefined))
      .map(({ id }) => id),
  })).filter(({ ids }) => ids.length > 0);
}
