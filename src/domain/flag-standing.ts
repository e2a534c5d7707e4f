import type { PeriodId, PlaceId } from './brand.ts';
import { daysBetween } from './day.ts';
import { dayInWords, spanInWords } from './day-words.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import type { Noun } from './noun.ts';
import type { PLACE_FOR } from './place.ts';
import type { Design, Place, Thing } from './shelf.ts';

/** What a place keeps, with what it takes from the places around it. */
export interface Keeps {
  readonly isAway: boolean;
  readonly name: string;
  readonly holder?: string;
  readonly for?: (typeof PLACE_FOR)[number];
  readonly periods: readonly PeriodId[];
  readonly periodNames: string;
}

const KEPT_AS: { readonly [N in Noun]?: (typeof PLACE_FOR)[number] } = {
  mould: 'moulds',
  master: 'masters',
  injectedWax: 'injected waxes',
  casting: 'castings',
  wax: 'wax',
};

/** Whether a thing stands where it belongs, and is back when it should be. */
export function standingFlags(
  thing: Thing,
  keeps: Keeps | undefined,
  design: Design | undefined,
  periodName: (id: PeriodId) => string,
  rules: Rules,
): readonly Flag[] {
  if (thing.retired || !keeps || isUsedUp(thing)) return [];
  const late = lateFlag(thing, keeps, rules);
  const stray = strayFlag(thing, keeps, design, periodName, rules);
  return late ? (stray ? [late, stray] : [late]) : stray ? [stray] : [];
}

function isUsedUp(thing: Thing): boolean {
  return (thing.noun === 'injectedWax' || thing.noun === 'casting') && thing.pieces <= 0;
}

function lateFlag(thing: Thing, keeps: Keeps, rules: Rules): Flag | undefined {
  if (thing.until === undefined || thing.until >= rules.today) return undefined;
  const days = spanInWords(daysBetween(thing.until, rules.today));
  const who = keeps.holder ?? keeps.name;
  return flagOn(
    thing,
    rules,
    'out late',
    'act',
    `Out to ${who} until ${dayInWords(thing.until)}, ${days} past its day.`,
    'Ask for it back, or agree a new day.',
  );
}

/** A thing of another kind than its place is for, or of none of the periods the place keeps. Without a kind or period on both sides nothing is said. */
function strayFlag(
  thing: Thing,
  keeps: Keeps,
  design: Design | undefined,
  periodName: (id: PeriodId) => string,
  rules: Rules,
): Flag | undefined {
  if (keeps.isAway) return undefined;
  const kind = KEPT_AS[thing.noun];
  if (kind && keeps.for && keeps.for !== 'anything' && keeps.for !== kind) {
    return flagOn(
      thing,
      rules,
      'stray',
      'note',
      `${keeps.name} is for ${keeps.for}, and this is ${kind === 'wax' ? 'wax' : `one of the ${kind}`}.`,
      `Move it to where ${kind} are kept.`,
    );
  }
  const own = design?.periods;
  if (!own?.length || keeps.periods.length === 0 || own.some((id) => keeps.periods.includes(id))) return undefined;
  const named = own.map(periodName).join(', ');
  return flagOn(
    thing,
    rules,
    'stray',
    'note',
    `It is ${named}; ${keeps.name} keeps ${keeps.periodNames}.`,
    `Move it to a place that keeps ${named}.`,
  );
}

/** What each place keeps; kind and periods come from the nearest place around it that says. */
export function keepsOf(places: ReadonlyMap<PlaceId, Place>, periodName: (id: PeriodId) => string): ReadonlyMap<PlaceId, Keeps> {
  const known = new Map<PlaceId, Keeps>();
  function keeps(place: Place, depth: number): Keeps {
    const before = known.get(place.id);
    if (before) return before;
    const around = place.in !== undefined && depth < 12 ? places.get(place.in) : undefined;
    const outer = around && keeps(around, depth + 1);
    const own = place.periods?.length ? place.periods : undefined;
    const purpose = place.for ?? outer?.for;
    const holder = place.holder ?? outer?.holder;
    const result: Keeps = {
      isAway: place.kind === 'away' || outer?.isAway === true,
      name: place.label ?? place.name ?? place.code ?? 'this place',
      ...(holder ? { holder } : {}),
      ...(purpose ? { for: purpose } : {}),
      periods: own ?? outer?.periods ?? [],
      periodNames: own ? own.map(periodName).join(', ') : (outer?.periodNames ?? ''),
    };
    known.set(place.id, result);
    return result;
  }
  for (const place of places.values()) keeps(place, 0);
  return known;
}
