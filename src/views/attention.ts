import type { Day, PlaceId } from '../domain/brand.ts';
import { FLAG_KINDS, type FlagKind } from '../domain/entry.ts';
import { type Flag, LEVELS, type Level, RANKS, type Rules, rulesOf } from '../domain/flag.ts';
import { flagsOf, lookAt } from '../domain/flags.ts';
import { type Shelf, thingOf } from '../domain/shelf.ts';
import { SI_UNITS, type Units } from '../domain/units.ts';
import { FLAGGED, flagsOfNoun, type NounFlags } from './attention-noun.ts';
import type { PlaceMark } from './fronts.ts';

/** What needs attention today. Lists are made when first asked for. */
export interface Attention {
  /** Flags in force. */
  readonly count: number;
  readonly counts: { readonly [L in Level]: number };
  /** Most pressing first, those set aside left out. */
  readonly flags: readonly Flag[];
  /** Set aside, soonest back first. */
  readonly aside: readonly Flag[];
  /** What calls for attention directly in each place, each kind once, worst first; boxes inside it are counted for themselves. */
  readonly byPlace: ReadonlyMap<PlaceId, readonly PlaceMark[]>;
  /** Flags in force of a thing. */
  to(thing: string): readonly Flag[];
}

let rules: Rules | undefined;
let last: { readonly shelf: Shelf; readonly rules: Rules; readonly units: Units; readonly attention: Attention } | undefined;

/** Everything that needs attention. Asked for again with the same shelf and day it is the very same answer. */
export function attentionOf(shelf: Shelf, today: Day, units: Units = SI_UNITS): Attention {
  // The very same rules as long as nothing they are made of changed, so that what was judged stays judged.
  if (!rules || rules.today !== today || rules.studio !== shelf.studio) rules = rulesOf(today, shelf.studio);
  if (last?.shelf === shelf && last.rules === rules && last.units === units) return last.attention;
  const look = lookAt(shelf, rules, units);
  const attention = together(
    FLAGGED.map((noun) => flagsOfNoun(shelf, rules as Rules, units, noun)),
    (id) => {
      const thing = thingOf(shelf, id);
      return thing ? flagsOf(thing, look).filter((flag) => flag.asideUntil === undefined) : [];
    },
  );
  last = { shelf, rules, units, attention };
  return attention;
}

function together(parts: readonly NounFlags[], to: Attention['to']): Attention {
  const perRank = Array.from({ length: RANKS }, (_, rank) => parts.reduce((sum, part) => sum + (part.counts[rank] ?? 0), 0));
  const ofLevel = (level: Level) => {
    const first = (LEVELS.length - 1 - LEVELS.indexOf(level)) * FLAG_KINDS.length;
    return perRank.slice(first, first + FLAG_KINDS.length).reduce((sum, count) => sum + count, 0);
  };
  const counts = { note: ofLevel('note'), soon: ofLevel('soon'), act: ofLevel('act') };
  let lists: Pick<Attention, 'flags' | 'aside'> | undefined;
  let byPlace: Attention['byPlace'] | undefined;
  const listed = () => {
    lists ??= listsOf(parts);
    return lists;
  };
  return {
    count: counts.note + counts.soon + counts.act,
    counts,
    get flags() {
      return listed().flags;
    },
    get aside() {
      return listed().aside;
    },
    get byPlace() {
      byPlace ??= marksOf(parts);
      return byPlace;
    },
    to,
  };
}

function listsOf(parts: readonly NounFlags[]): Pick<Attention, 'flags' | 'aside'> {
  const ranked: Flag[][] = Array.from({ length: RANKS }, () => []);
  const aside: Flag[] = [];
  for (const part of parts) {
    for (const flags of part.flags) {
      for (const flag of flags) (flag.asideUntil === undefined ? (ranked[flag.rank] as Flag[]) : aside).push(flag);
    }
  }
  aside.sort((a, b) => ((a.asideUntil as Day) < (b.asideUntil as Day) ? -1 : 1));
  return { flags: ranked.flat(), aside };
}

/** What a rank stands for; ranks run from the most pressing on. */
const OF_RANK = LEVELS.toReversed().flatMap((level) =>
  FLAG_KINDS.map((kind): { readonly kind: FlagKind; readonly level: Level } => ({ kind, level })),
);

function marksOf(parts: readonly NounFlags[]): Attention['byPlace'] {
  const sums = new Map<PlaceId, number[]>();
  for (const part of parts) {
    for (const [place, counts] of part.byPlace) {
      const sum = sums.get(place);
      if (!sum) sums.set(place, [...counts]);
      else for (const [rank, count] of counts.entries()) sum[rank] = (sum[rank] ?? 0) + (count ?? 0);
    }
  }
  const marks = new Map<PlaceId, readonly PlaceMark[]>();
  for (const [place, counts] of sums) {
    const list: PlaceMark[] = [];
    counts.forEach((count, rank) => {
      if (count > 0) list.push({ ...(OF_RANK[rank] as (typeof OF_RANK)[number]), count });
    });
    if (list.length > 0)
      marks.set(
        place,
        list.sort((a, b) => LEVELS.indexOf(b.level) - LEVELS.indexOf(a.level) || b.count - a.count),
      );
  }
  return marks;
}

/** Flags in force of one thing. */
export function attentionTo(attention: Attention, id: string): readonly Flag[] {
  return attention.to(id);
}
