import type { PeriodId, PlaceId, Sha256, ThingId } from '../domain/brand.ts';
import { mastersByDesign, mouldsByDesign } from '../domain/by-design.ts';
import { addPlacesOfDesign } from '../domain/filling.ts';
import { wordsOf } from '../domain/folding.ts';
import { parseCode } from '../domain/label.ts';
import { platesByDesign } from '../domain/made-kinds.ts';
import { sayCount } from '../domain/measure-words.ts';
import { childrenOf, pathNames, pathText } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import { designsByPeriod, periodsInOrder, periodsOverlapping } from '../domain/period-span.ts';
import { portraitOf } from '../domain/portrait.ts';
import { isProblem } from '../domain/problem.ts';
import { best, type Correction, search, spellableWords } from '../domain/search.ts';
import { indexInSlices, searchIndexOf } from '../domain/search-index.ts';
import type { Period, Place, Shelf, Thing } from '../domain/shelf.ts';
import { isSpent } from '../domain/spent.ts';
import { titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { spanInYears } from '../domain/year.ts';
import { parseYears, type Years, yearsInWords } from '../domain/years.ts';
import { detailOf } from './detail.ts';
import { type OnFront, onFront } from './front-of.ts';
import { type State, statesOf } from './state.ts';

export const ANSWERS_MAX = 60;
const PERIODS_MAX = 5;
/** Places told of a period that is the only one found, and of each of several. */
const PLACES_MAX = 12;
const PLACES_EACH = 2;

export interface PlaceAnswer {
  readonly id: PlaceId;
  /** From the outermost inwards: “Plan chest”, “A3”. */
  readonly names: readonly string[];
  readonly front: OnFront | null;
  /** The studio keeps this period there; otherwise things of it only happen to stand there. */
  readonly isAssigned: boolean;
  /** Pieces of the period standing there. */
  readonly pieces: number;
}

export interface PeriodAnswer {
  readonly id: PeriodId;
  readonly name: string;
  /** “323 – 30 BC”; empty for a topic without a span. */
  readonly span: string;
  readonly places: readonly PlaceAnswer[];
  readonly morePlaces: number;
}

export interface ThingAnswer {
  readonly id: ThingId;
  readonly noun: Noun;
  readonly title: string;
  /** What it is, when the title does not say. */
  readonly detail: string;
  /** “Plan chest › A3”; empty when it has no place. */
  readonly place: string;
  readonly front: OnFront | null;
  readonly states: readonly State[];
  readonly picture?: Sha256;
  readonly isSpent: boolean;
}

export interface WhereIs {
  /** What a year or a span of years was read as, and how many periods touch it: “3 periods overlap the 8th century BC:”. */
  readonly years?: string;
  readonly periods: readonly PeriodAnswer[];
  readonly things: readonly ThingAnswer[];
  readonly more: number;
  readonly corrections: readonly Correction[];
}

/** Answers to what was typed, best first: periods with their drawers, then at most so many things with the place they stand in. */
export function whereIs(shelf: Shelf, query: string, units?: Units, most = ANSWERS_MAX, mostPeriods = PERIODS_MAX): WhereIs {
  const years = parseYears(query);
  const dated = isProblem(years) ? [] : periodsOverlapping(shelf, years);
  const coded = codedThing(shelf, query);
  const index = searchIndexOf(shelf);
  const found = search(index, wordsOf(query), isProblem(years) && !coded);
  const named = best(index, found, PERIODS_MAX, (noun) => noun === 'period').documents.map(({ thing }) => thing as Period);
  const periods = [...new Set([...dated, ...named])].slice(0, Math.max(mostPeriods, most < ANSWERS_MAX ? 0 : dated.length));
  const { documents, count } = best(index, found, most, (noun) => noun !== 'period');
  const others = documents.map(({ thing }) => thing);
  const things = coded ? [coded, ...others.filter((thing) => thing !== coded)].slice(0, most) : others;
  return {
    ...(isProblem(years) ? {} : { years: yearsSay(years, dated.length, named.length > 0) }),
    periods: periods.map((period) => periodAnswer(shelf, period, periods.length === 1 && most >= ANSWERS_MAX ? PLACES_MAX : PLACES_EACH)),
    things: things.map((thing) => thingAnswer(shelf, thing, units)),
    more: Math.max(0, count - things.length),
    corrections: found.corrections,
  };
}

/** Where no years touch them, periods may still be found by their words, such as one that is called “c. 1800 BC” and has no years. */
function yearsSay(years: Years, count: number, isNamed: boolean): string {
  const words = yearsInWords(years);
  const isOne = years.from === years.to;
  if (count > 0) return isOne ? `In ${words}:` : `${sayCount(count, 'period')} ${count === 1 ? 'overlaps' : 'overlap'} ${words}:`;
  if (isNamed) return `No period’s years ${isOne ? 'hold' : 'overlap'} ${words}; found by name or note:`;
  return `No period of yours ${isOne ? 'holds' : 'overlaps'} ${words}.`;
}

/** All periods, for when nothing has been typed. */
export function allPeriods(shelf: Shelf): readonly Pick<PeriodAnswer, 'id' | 'name' | 'span'>[] {
  return periodsInOrder(shelf).map((period) => ({
    id: period.id,
    name: titleOf(shelf, period),
    span: spanInYears(period.from, period.to),
  }));
}

const REHEARSED = 3;

/** Words to be answered unseen before anything is typed, of every sort: of designs, one by a slip, two at once, a year, and periods. */
export function rehearsals(shelf: Shelf): readonly string[] {
  const [first = '', ...designs] = [...shelf.things.design.values()].slice(0, REHEARSED).map(({ name }) => wordsOf(name ?? '')[0] ?? '');
  const periods = allPeriods(shelf).slice(0, REHEARSED);
  const year = [...shelf.things.period.values()].find(({ from }) => from !== undefined)?.from;
  const asked = [first, ...designs, first && `${first}x`, `${periods[0]?.name ?? ''} ${first}`, year === undefined ? '' : `${year}`];
  return [...asked, ...periods.map(({ name }) => name)].filter((each) => each.trim() !== '');
}

/** Periods with a word that begins with what was typed: the answer to a first letter, which thousands of things have. */
export function periodsBeginning(shelf: Shelf, typed: string): ReturnType<typeof allPeriods> {
  const [begin = ''] = wordsOf(typed);
  return allPeriods(shelf).filter(({ name }) => wordsOf(name).some((word) => word.startsWith(begin)));
}

/** What the first letters would otherwise wait for: the index, what moulds' marks are told by, and where each period's things stand. */
export function* readyInSlices(shelf: Shelf): Generator<void, void> {
  yield* indexInSlices(shelf);
  spellableWords(searchIndexOf(shelf));
  for (const ready of [mouldsByDesign, mastersByDesign, platesByDesign]) {
    yield;
    ready(shelf);
  }
  yield;
  for (const period of shelf.things.period.keys()) {
    placesOf(shelf, period);
    yield;
  }
}

/** A label's code, typed whole in any of its forms, is one thing and no other. */
function codedThing(shelf: Shelf, query: string): Thing | undefined {
  const code = parseCode(query);
  if (isProblem(code)) return undefined;
  for (const part of searchIndexOf(shelf).parts) {
    const document = part.documents.find(({ thing }) => thing.code === code);
    if (document) return document.thing;
  }
  return undefined;
}

function periodAnswer(shelf: Shelf, period: Period, most = PLACES_MAX): PeriodAnswer {
  const places = placesOf(shelf, period.id);
  return {
    id: period.id,
    name: titleOf(shelf, period),
    span: spanInYears(period.from, period.to),
    places: places.slice(0, most).map((place) => ({ ...place, names: pathNames(shelf, place.id), front: onFront(shelf, place.id) })),
    morePlaces: Math.max(0, places.length - most),
  };
}

type Holding = Pick<PlaceAnswer, 'id' | 'isAssigned' | 'pieces'>;
const holdings = new WeakMap<Shelf['things'], Map<PeriodId, readonly Holding[]>>();

/** Where a period is kept, then where else things of it stand, most pieces first. Told once for a shelf, since a letter more often finds the same period. */
function placesOf(shelf: Shelf, period: PeriodId): readonly Holding[] {
  let known = holdings.get(shelf.things);
  if (!known) {
    known = new Map();
    holdings.set(shelf.things, known);
  }
  const before = known.get(period);
  if (before) return before;
  const pieces = new Map<PlaceId, number>();
  for (const design of designsByPeriod(shelf).get(period) ?? []) addPlacesOfDesign(shelf, design, pieces);
  const assigned = new Set((placesOfPeriods(shelf).get(period) ?? []).map(({ id }) => id));
  const places = [...new Set([...assigned, ...pieces.keys()])]
    .filter((id) => shelf.things.place.has(id))
    .map((id) => ({ id, isAssigned: assigned.has(id), pieces: pieces.get(id) ?? 0 }))
    .sort((a, b) => Number(b.isAssigned) - Number(a.isAssigned) || b.pieces - a.pieces);
  known.set(period, places);
  return places;
}

const assignments = new WeakMap<object, ReadonlyMap<PeriodId, readonly Place[]>>();

function placesOfPeriods(shelf: Shelf): ReadonlyMap<PeriodId, readonly Place[]> {
  const known = assignments.get(shelf.things.place);
  if (known) return known;
  const byPeriod = new Map<PeriodId, Place[]>();
  for (const list of childrenOf(shelf).values()) {
    for (const place of list) {
      for (const period of place.periods ?? []) byPeriod.set(period, [...(byPeriod.get(period) ?? []), place]);
    }
  }
  assignments.set(shelf.things.place, byPeriod);
  return byPeriod;
}

function thingAnswer(shelf: Shelf, thing: Thing, units?: Units): ThingAnswer {
  const place = thing.noun === 'place' ? thing.id : thing.at;
  const picture = portraitOf(shelf, thing);
  return {
    id: thing.id,
    noun: thing.noun,
    title: titleOf(shelf, thing),
    detail: detailOf(shelf, thing, units).join(' · '),
    place: pathText(shelf, place),
    front: onFront(shelf, place),
    states: statesOf(shelf, thing),
    ...(picture === undefined ? {} : { picture }),
    isSpent: isSpent(thing),
  };
}
