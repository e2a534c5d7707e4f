import type { Code, Day } from '../src/domain/brand.ts';
import type { Entry, EntryKind } from '../src/domain/entry.ts';
import type { Noun } from '../src/domain/noun.ts';
import type { Shelf } from '../src/domain/shelf.ts';
import { msOf } from './calendar.ts';
import type { Add, Chance, Domain, MakeCode, Person, Seen } from './kinds.ts';

/** Device of each person’s phone; one is shared. */
const PHONES: Readonly<Record<Person, string>> = { Maren: 'TQ7KFA', Jory: 'N5WX2C', Pell: 'TQ7KFA' };

/** The journal being written: an action’s entries get ids and label codes from the domain’s own desk, are read by its own parser, and folded. */
export function openBook(domain: Domain, ownChance: Chance) {
  let chance = ownChance;
  const entries: Entry[] = [];
  const taken = new Set<Code>();
  let shelf: Shelf = domain.EMPTY_SHELF;
  let clock = domain.CLOCK_ZERO;
  let today = '' as Day;
  let minute = 0;

  function checked(raw: object): Entry {
    const entry = domain.parseEntry(raw);
    if (domain.isProblem(entry)) throw new Error(`${entry.says}\n${JSON.stringify(raw)}`);
    return entry;
  }

  /** One action: `write` adds its entries with `add(kind, fields)`. Gives back the first one’s id. */
  function act(by: Person, write: (add: Add, code: MakeCode) => void): string {
    minute = Math.min(minute + chance.between(0.4, 18), 1380);
    const isTaken = (code: Code) => taken.has(code);
    const nowMs = Math.max(Math.round(msOf(today, minute)), clock.ms + 1);
    const desk = domain.makeDesk({ today, nowMs, clock, device: PHONES[by], by, bytes: chance.bytes, isTaken });
    const from = entries.length;
    write(
      (kind, fields) => {
        const { id, on, by: who, step } = desk.entry();
        entries.push(checked({ id, kind, on, by: who, ...(step ? { step } : {}), ...fields }));
        return id;
      },
      (noun) => {
        const made = desk.code(noun);
        taken.add(made);
        return made;
      },
    );
    const added = entries.slice(from);
    const [first] = added;
    const last = added.at(-1);
    if (!first || !last) throw new Error('an action of no entries');
    clock = domain.clockOf(last.id);
    shelf = domain.foldOn(shelf, added) ?? domain.foldAll(entries);
    return first.id;
  }

  return {
    entries,
    get shelf() {
      return shelf;
    },
    get today(): string {
      return today;
    },
    open(day: string) {
      today = day as Day;
      minute = chance.whole(455, 475);
    },
    get(id: string): Seen {
      const thing = domain.thingOf(shelf, id);
      if (!thing) throw new Error(`nothing with the id ${id}`);
      return thing as unknown as Seen;
    },
    all(noun: Noun): Seen[] {
      return [...shelf.things[noun].values()] as unknown as Seen[];
    },
    /** How many things stand directly in a place. */
    countIn(place: string): number {
      return (shelf.contents as ReadonlyMap<string, ReadonlySet<string>>).get(place)?.size ?? 0;
    },
    act,
    /** Runs a job with a chance of its own, so that what is added to the studio leaves the rest of its story as it was. */
    aside(other: Chance, job: () => void) {
      const before = { chance, minute };
      chance = other;
      job();
      ({ chance, minute } = before);
    },
    /** An action of one entry. */
    note: (by: Person, kind: EntryKind, fields: object) => act(by, (add) => add(kind, fields)),
    /** An action of one entry that records a thing with a printed label. */
    record: (by: Person, noun: Noun, fields: object, rest: object = {}) =>
      act(by, (add, code) => add('recorded', { noun, fields: { code: code(noun), ...fields }, ...rest })),
  };
}
