import { describe, expect, it } from 'vitest';
import { daysBetween } from '../../src/domain/day.ts';
import type { Entry, EntryOf } from '../../src/domain/entry.ts';
import { inForce } from '../../src/domain/fold.ts';
import { roomNextMonth } from '../../src/domain/room.ts';
import { entries, LAST_DAY, shelf, things } from './read-demo.ts';

const lived = inForce(entries);
const { injectedWax, casting, wax, mould, master, injector } = shelf.things;
const ofKind = <K extends Entry['kind']>(kind: K) => lived.filter((entry): entry is EntryOf<K> & Entry => entry.kind === kind);
const sum = (parts: Readonly<Record<string, number>> | undefined) => Object.values(parts ?? {}).reduce((a, b) => a + b, 0);

/** Ids named anywhere in an entry, apart from its own and those of other entries. */
function named(value: unknown, key = ''): string[] {
  if (typeof value === 'string')
    return key !== 'id' && key !== 'step' && key !== 'entry' && /^[0-9A-HJKMNP-TV-Z]{18}$/.test(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([inner, each]) => named(each, Array.isArray(value) ? key : inner));
}

describe('the demo studio makes sense', () => {
  it('names only things recorded before', () => {
    const known = new Set(things.map(({ id }) => id as string));
    const wrong = lived.flatMap((entry) => named(entry).filter((id) => !known.has(id) || id >= entry.id));
    expect(wrong).toEqual([]);
    expect(lived.flatMap((entry) => named(entry)).length).toBeGreaterThan(10_000);
  });

  it('takes back and continues only what came before', () => {
    const ids = new Set(entries.map(({ id }) => id));
    for (const { step } of entries) if (step) expect(ids.has(step)).toBe(true);
    const back = entries.filter((entry) => entry.kind === 'withdrawn');
    expect(back.length).toBeGreaterThanOrEqual(5);
    for (const { entry } of back) expect(ids.has(entry)).toBe(true);
  });

  it('never has fewer than no pieces or grams, and ends with what the shelf says', () => {
    const left = new Map<string, number>();
    const add = (id: string | undefined, amount: number) => {
      if (id === undefined) return;
      const now = (left.get(id) ?? 0) + amount;
      if (now < -1e-6) throw new Error(`${id} falls to ${now}`);
      left.set(id, now);
    };
    for (const entry of lived) {
      if (entry.kind === 'recorded') add(entry.id, entry.pieces ?? entry.grams ?? 0);
      else if (entry.kind === 'received') add(entry.wax, entry.grams);
      else if (entry.kind === 'weighed') left.set(entry.wax, entry.grams);
      else if (entry.kind === 'counted') left.set(entry.of, entry.pieces);
      else if (entry.kind === 'injected') {
        add(entry.wax, -(entry.grams ?? 0));
        add(entry.onto ?? (entry.to && entry.id), entry.good);
      } else if (entry.kind === 'dressed') {
        add(entry.from, -entry.good - entry.scrapped);
        add(entry.onto ?? entry.id, entry.good);
      } else if (entry.kind === 'invested') for (const lot of entry.waxes) add(lot.from, -lot.pieces);
      else if (entry.kind === 'cast') add(entry.onto ?? entry.id, entry.sound);
      else if (entry.kind === 'issued') add(entry.of, -(entry.pieces ?? entry.grams ?? 0));
    }
    for (const pile of [...injectedWax.values(), ...casting.values()]) expect(pile.pieces).toBe(left.get(pile.id));
    for (const tub of wax.values()) expect(tub.grams).toBeCloseTo(left.get(tub.id) as number, 6);
  });

  it('gets from each run as many waxes as its shots and cavities give', () => {
    const runs = ofKind('injected');
    expect(runs.length).toBeGreaterThan(600);
    for (const run of runs) expect(run.good + sum(run.rejects), run.id).toBe(run.shots * (mould.get(run.mould)?.cavities ?? 1));
  });

  it('casts as many pieces as were invested', () => {
    const flasks = new Map<string, number>();
    for (const entry of lived) {
      if (entry.kind === 'invested') {
        expect(flasks.get(entry.flask) ?? 0).toBe(0);
        flasks.set(
          entry.flask,
          entry.waxes.reduce((pieces, lot) => pieces + lot.pieces, 0),
        );
      } else if (entry.kind === 'cast' && entry.flask)
        flasks.set(entry.flask, (flasks.get(entry.flask) ?? 0) - entry.sound - sum(entry.scrap));
    }
    expect([...flasks.values()].filter((pieces) => pieces !== 0)).toEqual([]);
    expect(flasks.size).toBeGreaterThanOrEqual(6);
  });

  it('shoots no mould that has failed or is retired', () => {
    const out = new Set<string>();
    for (const entry of lived) {
      if (entry.kind === 'failed' || entry.kind === 'retired') out.add(entry.of);
      if (entry.kind === 'injected' && entry.wax) expect(out.has(entry.mould), entry.id).toBe(false);
    }
  });

  it('makes moulds after their masters, and masters after the moulds they came from', () => {
    for (const { id, made, master: from } of mould.values()) {
      const before = from && master.get(from)?.made;
      if (before && made) expect(daysBetween(before, made), id).toBeGreaterThanOrEqual(0);
    }
    for (const { id, made, from } of master.values()) {
      for (const source of from ?? []) {
        const before = (mould.get(source as never) ?? master.get(source as never))?.made;
        if (before && made) expect(daysBetween(before, made), id).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('uses the wax that tolerates cold in the cold months and the hot-room wax in high summer', () => {
    const months = (name: string) => {
      const [tub] = [...wax.values()].filter((each) => each.name === name);
      return new Set(
        ofKind('injected')
          .filter((run) => run.wax === tub?.id)
          .map(({ on }) => Number(on.slice(5, 7))),
      );
    };
    expect([...months('Violet')].sort((a, b) => a - b)).toEqual([1, 2, 3, 11, 12]);
    expect([...months('Grey')].filter((month) => month < 7 || month > 9)).toEqual([]);
    expect(months('Grey').size).toBeGreaterThanOrEqual(2);
    expect([...months('White sticky')]).toEqual([]);
    const held = [...injector.values()].map(({ holds }) => holds && wax.get(holds)?.name);
    expect(held.sort()).toEqual(['Green', 'Grey', 'Violet']);
    expect(roomNextMonth(LAST_DAY, shelf.studio).lowC).toBe(12);
  });

  it('is told by people and in steps', () => {
    expect(new Set(entries.map(({ by }) => by)).size).toBeGreaterThanOrEqual(3);
    expect(new Set(entries.map(({ id }) => id.slice(12))).size).toBeGreaterThanOrEqual(2);
    expect(entries.filter(({ step }) => step).length).toBeGreaterThan(300);
  });
});
