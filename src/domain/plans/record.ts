import type { CastingId, Grams, InjectedWaxId, PlaceId, Sha256 } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import type { Noun } from '../noun.ts';
import { numberOn } from '../numbering.ts';
import { isProblem, type Problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { NOUN_WORD, NOUNS_WORD, titleOf } from '../title.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { checkedFields, crossProblem } from './field-checks.ts';
import { UNLABELLED } from './label-things.ts';
import { allWritten } from './written.ts';

export interface RecordThing {
  readonly noun: Noun;
  /** As typed; each is checked. */
  readonly fields: Readonly<Record<string, unknown>>;
  readonly at?: PlaceId | undefined;
  readonly pieces?: number | undefined;
  readonly grams?: Grams | undefined;
  /** How many like this one. */
  readonly count?: number | undefined;
  readonly pictures?: readonly Sha256[] | undefined;
  /** A pile that what is recorded was taken off: a wax or a casting kept as a master. */
  readonly off?: InjectedWaxId | CastingId | undefined;
  /** What a refusal is to be read in. */
  readonly units?: Units | undefined;
  readonly confirmed?: boolean | undefined;
}

export const LIKE_MAX = 200;

/** Writes down a thing that was not recorded before, or several alike. A name, or what it was made from, is enough. */
export function planRecord(shelf: Shelf, desk: Desk, command: RecordThing): readonly Entry[] | Problem {
  const { noun, count = 1, at, pieces, grams, pictures, confirmed } = command;
  const fields = checkedFields(noun, command.fields, command.units);
  if (isProblem(fields)) return fields;
  const { design, master } = fields;
  if (!fields['name'] && !design && !master) return formProblem({ name: `Give the ${NOUN_WORD[noun]} a name.` });
  if (!Number.isInteger(count) || count < 1 || count > LIKE_MAX)
    return formProblem({ count: `From 1 to ${LIKE_MAX} can be recorded in one go.` });
  if (count > 1 && fields['code']) return formProblem({ code: 'One code cannot be on several things. Leave it empty: each gets its own.' });
  if (at !== undefined && !shelf.things.place.has(at)) return formProblem({ at: 'This place is no longer recorded. Choose another.' });
  const crossed = crossProblem(shelf, fields, desk.today);
  if (crossed) return crossed;
  const pile = command.off === undefined ? undefined : thingOf(shelf, command.off);
  if (command.off !== undefined && pile?.noun !== 'injectedWax' && pile?.noun !== 'casting')
    return formProblem({ from: 'The pile this was taken off is no longer recorded.' });
  const short =
    pile && 'pieces' in pile && (pile.pieces ?? 0) < count
      ? [`There are ${Math.max(0, pile.pieces ?? 0)} of ${titleOf(shelf, pile)} on record.`]
      : [];
  const warning = unconfirmed([...namesakes(shelf, noun, fields), ...short], confirmed);
  if (warning) return warning;
  const placed = noun === 'place' ? { fields: at ? { in: at, ...fields } : fields, at: undefined } : { fields, at };
  const recorded = namesFor(shelf, noun, fields['name'], count).map((name) => ({
    ...desk.entry(),
    kind: 'recorded',
    noun,
    at: placed.at,
    pieces,
    grams,
    pictures,
    fields: {
      ...placed.fields,
      ...(name === undefined ? {} : { name }),
      ...(fields['code'] || UNLABELLED.includes(noun) ? {} : { code: desk.code(noun) }),
    },
  }));
  const taken = pile ? [{ ...desk.entry(), kind: 'issued', of: pile.id, pieces: count, reason: 'kept as master' }] : [];
  return allWritten([...recorded, ...taken]);
}

/** What several recorded in one go are called: numbered on from the first, past the numbers that are taken; without a name they are alike. */
export function namesFor(shelf: Shelf, noun: Noun, name: unknown, count: number): readonly (string | undefined)[] {
  if (typeof name !== 'string' || count < 2) return Array.from({ length: count }, () => undefined);
  const taken = new Set([...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].map((thing) => thing.name?.toLocaleLowerCase()));
  return [name, ...numberOn(name, count - 1, (next) => taken.has(next.toLocaleLowerCase()))];
}

/** Things of the kind that go by the same name. Moulds and piles of one design are rightly called alike. */
function namesakes(shelf: Shelf, noun: Noun, fields: Readonly<Record<string, unknown>>): readonly string[] {
  const { name } = fields;
  if (typeof name !== 'string' || noun === 'injectedWax' || noun === 'casting') return [];
  const same = [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].filter(
    (thing) => thing.name?.toLocaleLowerCase() === name.toLocaleLowerCase() && sameParent(thing, fields),
  );
  if (same.length === 0) return [];
  const [one, many] = [NOUN_WORD[noun], NOUNS_WORD[noun]];
  return [same.length === 1 ? `There is a ${one} called ${name} already.` : `There are ${same.length} ${many} called ${name} already.`];
}

/** Drawer 3 of one cabinet is not drawer 3 of another. */
function sameParent(thing: Thing, fields: Readonly<Record<string, unknown>>): boolean {
  return thing.noun !== 'place' || thing.in === fields['in'];
}
