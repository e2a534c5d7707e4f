import type { DesignId } from './brand.ts';
import type { Flag, Rules } from './flag.ts';
import { doubtFlags } from './flag-doubt.ts';
import { masterFlags } from './flag-master.ts';
import { mouldFlags } from './flag-mould.ts';
import { placeFlags } from './flag-place.ts';
import { type Keeps, keepsOf, standingFlags } from './flag-standing.ts';
import { castingsOnHand, stockFlags } from './flag-stock.ts';
import { waxFlags } from './flag-wax.ts';
import type { Design, Master, Mould, Shelf, Thing } from './shelf.ts';
import { SI_UNITS, type Units } from './units.ts';

/** What a thing's flags were judged by: as long as all of it is the very same, so are the flags. */
interface Judged {
  readonly rules: Rules;
  readonly keeps: Keeps | undefined;
  readonly design: Design | undefined;
  readonly flags: readonly Flag[];
}

/** By the immutable thing itself, so that an entry costs only the judging of what it touched. */
const judged = new WeakMap<Thing, Judged>();
const NONE: readonly Flag[] = [];

/** What stays the same from thing to thing while one shelf is looked at. */
export interface Look {
  readonly shelf: Shelf;
  readonly rules: Rules;
  readonly units: Units;
  readonly keeps: ReadonlyMap<string, Keeps>;
  readonly onHand: () => ReadonlyMap<DesignId, number>;
}

const keepsKnown = new WeakMap<
  Shelf['things']['place'],
  { readonly periods: Shelf['things']['period']; readonly keeps: ReadonlyMap<string, Keeps> }
>();

export function lookAt(shelf: Shelf, rules: Rules, units: Units = SI_UNITS): Look {
  const { place, period } = shelf.things;
  let known = keepsKnown.get(place);
  if (known?.periods !== period) {
    known = { periods: period, keeps: keepsOf(place, (id) => period.get(id)?.name ?? 'a period no longer recorded') };
    keepsKnown.set(place, known);
  }
  return {
    shelf,
    rules,
    units,
    keeps: known.keeps,
    onHand: () => castingsOnHand(shelf.things.casting),
  };
}

/** What calls for attention about one thing, set-aside flags included; none for a retired thing. */
export function flagsOf(thing: Thing, look: Look): readonly Flag[] {
  const plain = plainFlags(thing, look);
  const further = furtherFlags(thing, look);
  return further.length === 0 ? plain : plain.length === 0 ? further : [...plain, ...further];
}

/** Flags told from the thing, its place and its design. */
export function plainFlags(thing: Thing, look: Look): readonly Flag[] {
  if (thing.retired) return NONE;
  const { rules } = look;
  const keeps = thing.at === undefined ? undefined : look.keeps.get(thing.at);
  const design =
    'design' in thing && thing.design !== undefined ? (look.shelf.things.design.get(thing.design) as Design | undefined) : undefined;
  const before = judged.get(thing);
  if (before && before.rules === rules && before.keeps === keeps && before.design === design) return before.flags;
  const standing = standingFlags(
    thing,
    keeps,
    design,
    (id) => look.shelf.things.period.get(id)?.name ?? 'a period no longer recorded',
    rules,
  );
  const own = thing.noun === 'mould' ? mouldFlags(thing as Mould, rules) : doubtFlags(thing, rules);
  const flags = own.length === 0 ? standing : standing.length === 0 ? own : [...own, ...standing];
  judged.set(thing, { rules, keeps, design, flags: flags.length === 0 ? NONE : flags });
  return flags;
}

/** Flags that rest on other things too; few things have them, and they are judged each time. */
export function furtherFlags(thing: Thing, look: Look): readonly Flag[] {
  switch (thing.noun) {
    case 'wax':
      return waxFlags(thing, look.shelf.things.injector.values(), look.rules, look.units);
    case 'place':
      return placeFlags(look.shelf, thing, look.rules);
    case 'design':
      return stockFlags(thing, look.onHand(), look.rules);
    case 'master':
      return masterFlags(look.shelf, thing as Master, look.rules);
    default:
      return NONE;
  }
}
