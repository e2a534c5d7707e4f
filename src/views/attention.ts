import type { Day, PlaceId } from '../domain/brand.ts';
import { FLAG_KINDS, type FlagKind } from '../domain/entry.ts';
import { piecesByPlace, STANDING } from '../domain/filling.ts';
import { type Flag, LEVELS, type Level, RANKS, type Rules, rulesOf } from '../domain/flag.ts';
import { flagsOf, lookAt, plainFlags } from '../domain/flags.ts';
import { RUBBERS } from '../domain/mould.ts';
import { type Shelf, thingOf } from '../domain/shelf.ts';
import { SI_UNITS, type Units } from '../domain/units.ts';
import { usualRejects } from '../domain/usual-rejects.ts';
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

/** The very same rules as long as nothing they are made of changed, so that what was judged stays judged. */
function rulesFor(shelf: Shelf, today: Day): Rules {
  const usual = usualRejects(shelf.things.mould);
  const isSame =
    rules && rules.today === today && rules.studio === shelf.studio && RUBBERS.every((each) => rules?.usual[each] === usual[each]);
  if (!rules || !isSame) rules = rulesOf(today, shelf.studio, usual);
  return rules;
}

/** Everything that needs attention. Asked for again with the same shelf and day it is the very same answer; each part is made when first asked for. */
export function attentionOf(shelf: Shelf, today: Day, units: Units = SI_UNITS): Attention {
  const by = rulesFor(shelf, today);
  if (last?.shelf === shelf && last.rules === by && last.units === units) return last.attention;
  const attention = new Looked(shelf, by, units);
  last = { shelf, rules: by, units, attention };
  return attention;
}

/** Things judged before others get their turn. */
const SLICE = 200;

/** Judges everything a slice at a time, so that a big studio's first look need not be taken in one go; `attentionOf` then finds it all judged. */
export function* lookInSlices(shelf: Shelf, today: Day, units: Units): Generator<void, void> {
  const look = lookAt(shelf, rulesFor(shelf, today), units);
  let judged = 0;
  for (const noun of FLAGGED) {
    for (const thing of shelf.things[noun].values()) {
      plainFlags(thing, look);
      if (++judged % SLICE === 0) yield;
    }
  }
  for (const noun of STANDING) {
    piecesByPlace(shelf, noun);
    yield;
  }
  const attention = attentionOf(shelf, today, units);
  for (const noun of FLAGGED) {
    flagsOfNoun(shelf, look.rules, units, noun);
    yield;
  }
  void attention.byPlace;
}

class Looked implements Attention {
  private readonly shelf: Shelf;
  private readonly rules: Rules;
  private readonly units: Units;
  private made: readonly NounFlags[] | undefined;
  private lists: Pick<Attention, 'flags' | 'aside'> | undefined;
  private marks: Attention['byPlace'] | undefined;

  constructor(shelf: Shelf, by: Rules, units: Units) {
    this.shelf = shelf;
    this.rules = by;
    this.units = units;
  }

  private get parts(): readonly NounFlags[] {
    this.made ??= FLAGGED.map((noun) => flagsOfNoun(this.shelf, this.rules, this.units, noun));
    return this.made;
  }

  get counts(): Attention['counts'] {
    const ofLevel = (level: Level) => {
      const first = (LEVELS.length - 1 - LEVELS.indexOf(level)) * FLAG_KINDS.length;
      const perPart = this.parts.map(({ counts }) => counts.slice(first, first + FLAG_KINDS.length));
      return perPart.flat().reduce((sum, count) => sum + (count ?? 0), 0);
    };
    return { note: ofLevel('note'), soon: ofLevel('soon'), act: ofLevel('act') };
  }

  get count(): number {
    const { note, soon, act } = this.counts;
    return note + soon + act;
  }

  get flags(): Attention['flags'] {
    this.lists ??= listsOf(this.parts);
    return this.lists.flags;
  }

  get aside(): Attention['aside'] {
    this.lists ??= listsOf(this.parts);
    return this.lists.aside;
  }

  get byPlace(): Attention['byPlace'] {
    this.marks ??= marksOf(this.parts);
    return this.marks;
  }

  to(id: string): readonly Flag[] {
    const thing = thingOf(this.shelf, id);
    const look = lookAt(this.shelf, this.rules, this.units);
    return thing ? flagsOf(thing, look).filter((flag) => flag.asideUntil === undefined) : [];
  }
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
