import type { Day, PlaceId, Sha256, ThingId } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import { STANDING } from '../domain/filling.ts';
import type { Flag, Level } from '../domain/flag.ts';
import { isGone } from '../domain/gone.ts';
import { childrenOf, labelOf, pathText, placesWithin } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import { picturesOf, portraitOf } from '../domain/portrait.ts';
import { type Place, type Shelf, type Thing, thingOf } from '../domain/shelf.ts';
import { isSpent, isUsedUp } from '../domain/spent.ts';
import { titleOf } from '../domain/title.ts';
import { compareTitles } from '../domain/title-order.ts';
import type { Units } from '../domain/units.ts';
import { placesAround } from '../domain/whereabouts.ts';
import { spanInYears } from '../domain/year.ts';
import { detailOf } from './detail.ts';
import { type Front, front } from './front.ts';
import { type OnFront, onFront } from './front-of.ts';
import type { Fact } from './mould-facts.ts';
import type { PlaceMarks } from './place-mark.ts';
import { type State, statesOf } from './state.ts';

export interface Row {
  readonly id: ThingId;
  readonly noun: Noun;
  readonly title: string;
  readonly detail: string;
  /** Where it stands, “Plan chest › A3”; empty when nowhere. */
  readonly place: string;
  readonly states: readonly State[];
  /** What calls for attention about it, most pressing first. */
  readonly flags: readonly { readonly kind: Flag['kind']; readonly level: Level; readonly word: string; readonly says: string }[];
  /** Out until then. */
  readonly until?: Day;
  readonly picture?: Sha256;
  readonly isSpent: boolean;
}

export interface PlacePage {
  readonly id: PlaceId;
  readonly title: string;
  readonly kind: string;
  /** The places around it, outermost first. */
  readonly around: readonly { readonly id: PlaceId; readonly name: string }[];
  readonly path: string;
  readonly onFront: OnFront | null;
  readonly front: Front;
  readonly periods: readonly { readonly id: string; readonly name: string; readonly span: string }[];
  /** “over-full by 4”, “room for 9 more”; empty when nobody said what fits. */
  readonly room: string;
  readonly isOverFull: boolean;
  readonly facts: readonly Fact[];
  /** Out of use, and why. */
  readonly states: readonly State[];
  /** Who has the things of an away place. */
  readonly holder: string;
  readonly pictures: readonly Sha256[];
  readonly inside: readonly Front[];
  readonly rows: readonly Row[];
}

type FlagsTo = (id: string) => readonly Flag[];

/** Everything a place's page says; undefined when there is no such place. */
export function placePage(shelf: Shelf, id: PlaceId, marks: PlaceMarks, flagsTo: FlagsTo, units?: Units): PlacePage | undefined {
  const place = shelf.things.place.get(id);
  if (!place) return undefined;
  const own = front(shelf, place, marks);
  const over = own.capacity === undefined ? 0 : own.pieces - own.capacity;
  return {
    id,
    title: titleOf(shelf, place),
    kind: place.kind ?? 'place',
    around: placesAround(shelf, id)
      .slice(0, -1)
      .map((outer) => ({ id: outer.id, name: titleOf(shelf, outer) })),
    path: pathText(shelf, id),
    pictures: picturesOf(shelf, place),
    onFront: onFront(shelf, id),
    front: own,
    periods: (place.periods ?? []).flatMap((each) => {
      const period = shelf.things.period.get(each);
      return period ? [{ id: each, name: titleOf(shelf, period), span: spanInYears(period.from, period.to) }] : [];
    }),
    room: own.capacity === undefined ? '' : over > 0 ? `over-full by ${over}` : over === 0 ? 'just full' : `room for ${-over} more`,
    isOverFull: over > 0,
    facts: factsOf(place),
    states: statesOf(shelf, place),
    holder: place.holder ?? titleOf(shelf, place),
    inside: (childrenOf(shelf).get(id) ?? []).filter((inner) => !isGone(shelf, inner)).map((inner) => front(shelf, inner, marks)),
    rows: rowsIn(shelf, id, flagsTo, units),
  };
}

function factsOf(place: Place): PlacePage['facts'] {
  const facts: Fact[] = [];
  if (place.holder) facts.push({ name: 'Who has the things', says: place.holder });
  if (place.for && place.for !== 'anything') facts.push({ name: 'Meant for', says: place.for });
  if (place.code) facts.push({ name: 'Label code', says: place.code });
  if (place.note) facts.push({ name: 'Note', says: place.note });
  return facts;
}

/** What stands in a place, in the boxes inside it too: sound before spent, by title. */
function rowsIn(shelf: Shelf, id: PlaceId, flagsTo: FlagsTo, units?: Units): readonly Row[] {
  const rows: Row[] = [];
  for (const within of placesWithin(shelf, id)) {
    for (const thing of shelf.contents.get(within) ?? []) {
      const found = thingOf(shelf, thing);
      if (!found || found.noun === 'place' || isUsedUp(found)) continue;
      rows.push(rowOf(shelf, found, flagsTo, units, within === id ? undefined : within));
    }
  }
  return sorted(rows);
}

/** What has no place yet. */
export function rowsNowhere(shelf: Shelf, flagsTo: FlagsTo, units?: Units): readonly Row[] {
  const rows: Row[] = [];
  for (const noun of STANDING) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) {
      if (thing.at === undefined && !thing.retired && !isUsedUp(thing)) rows.push(rowOf(shelf, thing, flagsTo, units));
    }
  }
  return sorted(rows);
}

function sorted(rows: Row[]): readonly Row[] {
  return rows.sort((a, b) => Number(a.isSpent) - Number(b.isSpent) || compareTitles(a.title, b.title));
}

export function rowOf(shelf: Shelf, thing: Thing, flagsTo: FlagsTo, units?: Units, within?: PlaceId): Row {
  const picture = portraitOf(shelf, thing);
  const inner = within === undefined ? undefined : shelf.things.place.get(within);
  const detail = [inner ? `in ${labelOf(shelf, inner)}` : '', ...detailOf(shelf, thing, units)].filter((part) => part !== '').join(' · ');
  return {
    id: thing.id,
    noun: thing.noun,
    title: titleOf(shelf, thing),
    detail: thing.until === undefined ? detail : `${detail} · until ${dayInWords(thing.until)}`,
    place: thing.noun === 'place' ? '' : pathText(shelf, thing.at),
    states: statesOf(shelf, thing),
    flags: flagsTo(thing.id).map(({ kind, level, word = kind, says }) => ({ kind, level, word, says })),
    ...(thing.until === undefined ? {} : { until: thing.until }),
    ...(picture === undefined ? {} : { picture }),
    isSpent: isSpent(thing),
  };
}
