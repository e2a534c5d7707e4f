import type { Day, PlaceId, ThingId } from '../domain/brand.ts';
import { FLAG_KINDS, type FlagKind } from '../domain/entry.ts';
import { type Flag, LEVELS, type Level } from '../domain/flag.ts';
import { pathText } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import { type Shelf, thingOf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { attentionOf } from './attention.ts';

/** What a whole group of flags asks for. */
const TO_DO: Readonly<Record<FlagKind, string>> = {
  failed: 'Take out failed moulds',
  doubtful: 'Look at what failing moulds made',
  worn: 'Replace worn moulds, watch the others',
  faults: 'Mend, or look again',
  'old shots': 'Plan new moulds: many shots',
  'old rubber': 'Check old rubber',
  rejects: 'Find out why waxes are thrown out',
  'look due': 'Inspect',
  'wax low': 'Order wax',
  'wax wrong': 'Change the wax',
  'over-full': 'Make room',
  stray: 'Put strays where they belong',
  'out late': 'Ask for things back',
  'stock low': 'Cast more',
  'master unsound': 'Find or make masters',
};

export interface AttentionItem {
  readonly flag: Flag;
  readonly title: string;
  readonly noun: Noun;
  readonly id: ThingId;
  /** Where it stands: “Plan chest › A3”; absent for what stands nowhere, and for a place itself. */
  readonly stands?: { readonly id: PlaceId; readonly path: string };
}

export interface AttentionGroup {
  readonly kind: FlagKind;
  readonly title: string;
  readonly level: Level;
  readonly count: number;
  /** The first of them, most pressing first. */
  readonly items: readonly AttentionItem[];
}

export interface AttentionList {
  readonly count: number;
  readonly counts: { readonly [L in Level]: number };
  readonly groups: readonly AttentionGroup[];
  readonly aside: readonly AttentionItem[];
}

/** Everything that needs attention, grouped by what to do, the most pressing first; `shown` says how many of a group are wanted, `few` when it does not. */
export function attentionList(
  shelf: Shelf,
  today: Day,
  units: Units,
  few: number,
  shown: ReadonlyMap<FlagKind, number> = new Map(),
): AttentionList {
  const attention = attentionOf(shelf, today, units);
  const byKind = new Map<FlagKind, Flag[]>();
  for (const flag of attention.flags) {
    const list = byKind.get(flag.kind);
    if (list) list.push(flag);
    else byKind.set(flag.kind, [flag]);
  }
  const groups = [...byKind].map(([kind, flags]): AttentionGroup => {
    const items = flags.slice(0, shown.get(kind) ?? few).flatMap((flag) => itemOf(shelf, flag));
    return { kind, title: TO_DO[kind], level: (flags[0] as Flag).level, count: flags.length, items };
  });
  groups.sort((a, b) => LEVELS.indexOf(b.level) - LEVELS.indexOf(a.level) || FLAG_KINDS.indexOf(a.kind) - FLAG_KINDS.indexOf(b.kind));
  return { count: attention.count, counts: attention.counts, groups, aside: attention.aside.flatMap((flag) => itemOf(shelf, flag)) };
}

function itemOf(shelf: Shelf, flag: Flag): readonly AttentionItem[] {
  const thing = thingOf(shelf, flag.of);
  if (!thing) return [];
  const path = thing.noun === 'place' ? '' : pathText(shelf, thing.at);
  const title = thing.noun === 'place' ? pathText(shelf, thing.id) || titleOf(shelf, thing) : titleOf(shelf, thing);
  const stands = thing.at !== undefined && path !== '' ? { stands: { id: thing.at, path } } : {};
  return [{ flag, title, noun: thing.noun, id: thing.id, ...stands }];
}
