import type { Day, MasterId, MouldId, PlaceId } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import { kindsLeftTo, lastInSlices, usableMasters } from '../domain/last-of-kind.ts';
import { shareMade } from '../domain/made-kinds.ts';
import { sayCount, sayNumber } from '../domain/measure-words.ts';
import { pathText } from '../domain/nesting.ts';
import { chanceOfMissing, daysToCastings, kindsInSlices, shotsFor, startBy, type WantedKind } from '../domain/remake.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { through } from '../domain/slices.ts';
import type { ShotForecast, ToForecast } from '../domain/survival/life-sums.ts';
import { expectedShotsOf, groupOf } from '../domain/survival/rubber-lives.ts';
import { designAndSize, titleOf } from '../domain/title.ts';
import type { SumName } from './life-known.ts';
import { sayChance, sayLeft } from './mould-life.ts';

/** What has to be forecast before moulds can be put in order. */
export interface RemakeAsk {
  readonly kinds: readonly WantedKind[];
  readonly names: readonly SumName[];
  readonly moulds: readonly ToForecast[];
  /** Where each mould's forecast will be. */
  readonly at: ReadonlyMap<MouldId, number>;
}

export function remakeAsk(shelf: Shelf): RemakeAsk {
  return through(askInSlices(shelf));
}

/** The same a slice at a time. */
export function* askInSlices(shelf: Shelf): Generator<void, RemakeAsk> {
  const kinds = yield* kindsInSlices(shelf);
  const names: SumName[] = [];
  const moulds: ToForecast[] = [];
  const at = new Map<MouldId, number>();
  for (const [i, { moulds: living, pieces, design, size }] of kinds.entries()) {
    if (i % KINDS_AT_ONCE === KINDS_AT_ONCE - 1) yield;
    for (const mould of living) {
      const expected = expectedShotsOf(mould, shelf.studio)?.value;
      if (!expected) continue;
      const group = groupOf(mould);
      if (!names.includes(group)) names.push(group);
      at.set(mould.id, moulds.length);
      moulds.push({
        sum: names.indexOf(group),
        shots: mould.shots,
        expected,
        more: shotsFor(mould, pieces, shareMade(shelf, mould, design, size)),
      });
    }
  }
  return { kinds, names, moulds, at };
}

const KINDS_AT_ONCE = 20;

/** Where a new mould can come from. */
export interface Source {
  readonly says: string;
  readonly isSound: boolean;
  readonly master?: { readonly id: MasterId; readonly title: string };
  readonly place?: { readonly id: PlaceId; readonly path: string };
}

export interface RemakeItem {
  readonly key: string;
  readonly title: string;
  /** Pieces that would be missed on the average: chance × pieces. */
  readonly missed: number;
  readonly wanted: string;
  readonly chance: string;
  readonly moulds: readonly { readonly id: MouldId; readonly title: string; readonly says: string }[];
  readonly start: string;
  readonly isLate: boolean;
  /** Whether there is a master, or at least a mould to get one from. */
  readonly canBeMade: boolean;
  readonly source: Source;
  readonly isLast: boolean;
}

export interface RemakeList {
  readonly items: readonly RemakeItem[];
  /** Wanted kinds whose moulds will most likely do. */
  readonly safe: number;
}

/** Pieces missed on the average below which there is no call for a new mould yet. Common practice, no source. */
const LEAST_MISSED = 0.5;

/** Moulds to make again, those first whose loss would be felt most. */
export function remakeList(shelf: Shelf, ask: RemakeAsk, forecasts: readonly ShotForecast[], today: Day): RemakeList {
  const forecastOf = (mould: Mould): ShotForecast | undefined => forecasts[ask.at.get(mould.id) ?? -1];
  const judged = ask.kinds.map((kind) => {
    const chance = chanceOfMissing(kind.moulds.map((mould) => forecastOf(mould)?.chance));
    // Where nothing can be forecast, it may as well go either way.
    return { kind, chance, missed: kind.pieces * (chance ?? 0.5) };
  });
  const felt = judged
    .filter(({ missed }) => missed >= LEAST_MISSED)
    .sort((a, b) => b.missed - a.missed || ((a.kind.due ?? '9') < (b.kind.due ?? '9') ? -1 : 1));
  const items = felt.map(({ kind, chance, missed }): RemakeItem => {
    const { design, size, moulds } = kind;
    const rubber = moulds[0]?.rubber;
    const start = kind.due ? startBy(kind.due, rubber) : undefined;
    const source = sourceOf(shelf, kind);
    const canBeMade = source.master !== undefined || moulds.length > 0;
    return {
      key: `${design} ${size ?? ''}`,
      title: designAndSize(shelf, design, size) ?? 'A design no longer recorded',
      missed,
      wanted: wantedSays(kind),
      chance: chanceSays(chance, moulds.length),
      moulds: moulds.map((mould) => ({
        id: mould.id,
        title: mould.code ?? titleOf(shelf, mould),
        says: mouldSays(shelf, mould, forecastOf(mould), kind),
      })),
      start: startSays(start, today, daysToCastings(rubber), canBeMade),
      isLate: start !== undefined && start < today,
      canBeMade,
      source,
      isLast: moulds.some((mould) =>
        kindsLeftTo(shelf, mould).some((left) => left.design === design && (size === undefined || left.size === size)),
      ),
    };
  });
  return { items, safe: judged.length - felt.length };
}

function wantedSays({ pieces, forWants, due }: WantedKind): string {
  const kept = pieces - forWants;
  const parts = [
    ...(forWants > 0 ? [`${sayNumber(forWants)} for wants${due ? `, the first by ${dayInWords(due)}` : ''}`] : []),
    ...(kept > 0 ? [`${sayNumber(kept)} to keep on hand`] : []),
  ];
  return `${sayCount(pieces, 'piece')} missing: ${parts.join('; ')}.`;
}

function chanceSays(chance: number | undefined, moulds: number): string {
  if (moulds === 0) return 'There is no mould of it that could be shot.';
  if (chance === undefined) return 'Nothing can be forecast: say which rubber its moulds are of.';
  const none = moulds === 1 ? 'its mould gives out before they are made' : `none of its ${moulds} moulds makes them all by itself`;
  return `The chance that ${none} is ${sayChance(chance)}.`;
}

function mouldSays(shelf: Shelf, mould: Mould, forecast: ShotForecast | undefined, { pieces, design, size }: WantedKind): string {
  const where = pathText(shelf, mould.at);
  const stands = where ? ` · ${where}` : '';
  if (!forecast) return `${sayCount(mould.shots, 'shot')}, no forecast${stands}`;
  const { middle, range } = sayLeft(forecast.left);
  return `needs ${sayCount(shotsFor(mould, pieces, shareMade(shelf, mould, design, size)), 'shot')}, has ${middle} left (${range})${stands}`;
}

function startSays(start: Day | undefined, today: Day, days: number, canBeMade: boolean): string {
  const takes = `about ${sayCount(days, 'day')} from rubber to castings`;
  if (!canBeMade) {
    if (start === undefined) return `It cannot be made until there is a master; from then on it takes ${takes}.`;
    return start < today
      ? `It cannot be made until there is a master, which should have been ready by ${dayInWords(start)} (${takes}).`
      : `It cannot be made until there is a master, which has to be ready by ${dayInWords(start)} (${takes}).`;
  }
  if (start === undefined) return `No date is set; it takes ${takes}.`;
  if (start < today) return `Start now: it should have been begun by ${dayInWords(start)} (${takes}).`;
  return `Start by ${dayInWords(start)} (${takes}).`;
}

function sourceOf(shelf: Shelf, { design, size, moulds }: WantedKind): Source {
  const [master] = usableMasters(shelf, design, size);
  if (master) {
    const path = pathText(shelf, master.at);
    const isSound = master.state !== 'worn' && master.grade !== 'worn';
    const title = titleOf(shelf, master);
    const place = master.at && path ? { place: { id: master.at, path } } : {};
    return {
      says: isSound ? 'A sound master stands ready' : 'Its only master is worn',
      isSound,
      master: { id: master.id, title },
      ...place,
    };
  }
  const from = moulds.length > 0 ? 'dress a wax of a living mould, or keep a good casting as one.' : 'it has to be carved or found anew.';
  return { says: `There is no master: ${from}`, isSound: false };
}

/** Moulds that are the last of their kind, whether anything of them is wanted or not. */
export interface LastMould {
  readonly id: MouldId;
  readonly title: string;
  readonly detail: string;
}

export function lastMoulds(shelf: Shelf): readonly LastMould[] {
  return through(lastMouldsInSlices(shelf));
}

/** The same a slice at a time. */
export function* lastMouldsInSlices(shelf: Shelf): Generator<void, readonly LastMould[]> {
  const last = yield* lastInSlices(shelf);
  return last.map((mould) => ({
    id: mould.id,
    title: titleOf(shelf, mould),
    detail: [mould.grade ?? 'not looked at yet', sayCount(mould.shots, 'shot'), pathText(shelf, mould.at)].filter(Boolean).join(' · '),
  }));
}
