import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { TAIL_KEPT } from '../../src/store/seal.ts';
import { START_MS } from '../support/builders.ts';
import { closingKeepers } from '../support/closing-keepers.ts';
import { freshName, mustBe, plainRows, until } from '../support/database.ts';
import { aJournal } from '../support/entry-builders.ts';
import { histories, idAfter } from '../support/histories.ts';
import { plainShelf } from '../support/plain-shelf.ts';
import { first, newWax, undo, waxNames } from '../support/plans.ts';

const open = closingKeepers();
afterEach(() => vi.restoreAllMocks());

describe('two tabs', () => {
  it('follow each other at once', async () => {
    const name = freshName();
    const [a, b] = [await open(name), await open(name)];
    mustBe(await a.act(newWax('violet', 1)));
    await until(() => b.shelf().last === a.shelf().last);
    const entry = await first(b.act(newWax('green')));
    await until(() => a.shelf().last === b.shelf().last);
    mustBe(await a.act(undo(entry)));
    await until(() => b.shelf().last === a.shelf().last);
    expect(waxNames(a.shelf())).toEqual(['violet']);
    expect(plainShelf(a.shelf())).toEqual(plainShelf(b.shelf()));
    mustBe(await a.join(aJournal()));
    await until(() => b.shelf().things.design.size === 1);
    expect(plainShelf(a.shelf())).toEqual(plainShelf(b.shelf()));
  });

  it('follow also one that is closed as soon as it has acted', async () => {
    const name = freshName();
    const [a, b] = [await open(name), await open(name)];
    mustBe(await a.act(newWax('violet', 1)));
    mustBe(await a.act(newWax('green', 2)));
    a.close();
    await until(() => waxNames(b.shelf()).length === 2);
    expect(waxNames(b.shelf())).toEqual(['violet', 'green']);
  });

  it('write nothing any more into a database that newer code has taken over', async () => {
    const name = freshName();
    const keeper = await open(name);
    mustBe(await keeper.act(newWax('violet')));
    const rows = await plainRows(name, 'tail');
    await new Promise<void>((resolve) => {
      const newer = indexedDB.open(name, 990);
      newer.onsuccess = () => {
        newer.result.close();
        resolve();
      };
    });
    const refused = await keeper.act(newWax('green'));
    expect(isProblem(refused) && refused.says).toMatch(/brought up to date in another tab/);
    expect(await plainRows(name, 'tail')).toEqual(rows);
  });

  it('lose nothing and give no id twice when they act at the same moment', async () => {
    const name = freshName();
    const now = () => 1_700_000_000_000;
    const [a, b] = [await open(name, { now }), await open(name, { now })];
    const acts = Array.from({ length: 10 }, (_, i) => [a.act(newWax(`a${i}`, i % 3)), b.act(newWax(`b${i}`, i % 2))]).flat();
    const entries = (await Promise.all(acts)).flatMap((acted) => [...mustBe(acted as Entry[])]);
    expect(new Set(entries.map((entry) => entry.id)).size).toBe(entries.length);
    await until(() => a.shelf().last === b.shelf().last);
    expect(waxNames(a.shelf()).sort()).toEqual(
      Array.from({ length: 10 }, (_, i) => [`a${i}`, `b${i}`])
        .flat()
        .sort(),
    );
    expect(plainShelf(a.shelf())).toEqual(plainShelf(b.shelf()));
    expect(plainShelf(a.shelf())).toEqual(plainShelf(foldAll(await a.journal())));
  });

  it('stay right when one seals, joins or refolds while the other acts', async () => {
    const name = freshName();
    const [a, b] = [await open(name), await open(name)];
    mustBe(await a.act(newWax('violet', 150)));
    const jobs = [
      a.act(newWax('a1', 60)),
      b.seal(),
      a.act(newWax('a2')),
      b.join(aJournal()),
      a.act(newWax('a3')),
      b.refold(),
      a.seal(),
      b.act(newWax('b1')),
    ];
    await Promise.all(jobs);
    await until(() => a.shelf().last === b.shelf().last);
    await Promise.all([a.catchUp(), b.catchUp()]);
    const journal = await a.journal();
    expect(journal).toHaveLength(151 + 61 + 3 + aJournal().length);
    for (const keeper of [a, b, await open(name)]) expect(plainShelf(keeper.shelf())).toEqual(plainShelf(foldAll(journal)));
  });

  it('catch up with what was written while one slept, older joined entries too', async () => {
    const name = freshName();
    const now = () => START_MS + 90 * 86_400_000;
    const [awake, asleep] = [await open(name, { now }), await open(name, { now })];
    vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockImplementation(() => undefined);
    mustBe(await awake.act(newWax('violet')));
    await asleep.catchUp();
    expect(waxNames(asleep.shelf())).toEqual(['violet']);
    mustBe(await awake.join(aJournal()));
    await asleep.catchUp();
    expect(plainShelf(asleep.shelf())).toEqual(plainShelf(awake.shelf()));
    expect(asleep.shelf().things.design.size).toBe(1);
  });

  it('act on what another wrote although nobody has told them', async () => {
    const name = freshName();
    const [awake, asleep] = [await open(name), await open(name)];
    vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockImplementation(() => undefined);
    await asleep.catchUp();
    const names = ['violet'];
    mustBe(await awake.act(newWax('violet')));
    for (const actor of [asleep, awake, asleep]) {
      names.push(`wax ${names.length}`);
      mustBe(await actor.act(newWax(names.at(-1) ?? '')));
      expect(waxNames(actor.shelf())).toEqual(names);
    }
    // One action of more entries than are kept, so that none of them is in the tail any more.
    mustBe(await awake.act(newWax('whole', TAIL_KEPT + 1)));
    await awake.seal();
    expect(await plainRows(name, 'tail')).toEqual([]);
    mustBe(await asleep.act(newWax('last')));
    expect(waxNames(asleep.shelf())).toEqual([...names, 'whole', 'last']);
    expect(plainShelf(asleep.shelf())).toEqual(plainShelf(foldAll(await asleep.journal())));
  });

  it('show what they seal without having heard of it', async () => {
    const name = freshName();
    const [awake, asleep] = [await open(name), await open(name)];
    vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockImplementation(() => undefined);
    for (let i = 0; i < TAIL_KEPT + 3; i++) mustBe(await awake.act(newWax(`wax ${i}`)));
    await asleep.seal();
    expect(plainShelf(asleep.shelf())).toEqual(plainShelf(awake.shelf()));
  });

  it('lose nothing when one acts between the other’s reading the journal and writing it joined, or refolded', async () => {
    const name = freshName();
    const [a, b] = [await open(name), await open(name)];
    await Promise.all([b.join(aJournal()), a.act(newWax('violet'))]);
    await Promise.all([b.refold(), a.act(newWax('green'))]);
    await Promise.all([a.catchUp(), b.catchUp()]);
    const shelf = plainShelf(foldAll(await a.journal()));
    expect(shelf.entries).toBe(aJournal().length);
    for (const keeper of [a, b, await open(name)]) expect(plainShelf(keeper.shelf())).toEqual(shelf);
  });

  it('pay no heed to rows they know already, in the tail or sealed', async () => {
    const name = freshName();
    const keeper = await open(name);
    const entries = [...mustBe(await keeper.act(newWax('violet', 120))), ...mustBe(await keeper.act(newWax('green')))];
    await keeper.seal();
    const seen = vi.fn();
    keeper.subscribe(seen);
    const channel = new BroadcastChannel(`mouldkeep:${name}`);
    for (const entry of entries) channel.postMessage({ rows: [{ id: entry.id, text: JSON.stringify([entry]) }] });
    const next = { ...(entries.at(-1) as Entry), id: idAfter(entries) };
    channel.postMessage({ rows: [{ id: next.id, text: JSON.stringify([next]) }] });
    await until(() => keeper.shelf().last === next.id);
    channel.close();
    expect(seen).toHaveBeenCalledTimes(1);
  });
});

describe('random histories', { timeout: 60_000 }, () => {
  it('stay the same shelf and journal sealed at any point, joined twice, refolded and opened again', async () => {
    await fc.assert(
      fc.asyncProperty(histories(40), fc.nat({ max: 40 }), async (journal, cut) => {
        const name = freshName();
        const keeper = await open(name);
        expect(mustBe(await keeper.join(journal.slice(cut)))).toBe(journal.slice(cut).length);
        mustBe(await keeper.act(newWax('violet', 105)));
        await keeper.seal();
        mustBe(await keeper.join(journal.slice(0, cut)));
        expect(await keeper.join(journal)).toBe(0);
        mustBe(await keeper.act(newWax('green', 2)));
        const whole = await keeper.journal();
        expect(whole).toHaveLength(journal.length + 106 + 3);
        const shelf = plainShelf(foldAll(whole));
        expect(plainShelf(keeper.shelf())).toEqual(shelf);
        await keeper.seal();
        expect(plainShelf(keeper.shelf())).toEqual(shelf);
        const again = await open(name);
        expect(plainShelf(again.shelf())).toEqual(shelf);
        expect(await keeper.refold()).toBeUndefined();
        expect(plainShelf(keeper.shelf())).toEqual(shelf);
        expect(await keeper.journal()).toEqual(whole);
        keeper.close();
        again.close();
      }),
      { numRuns: 15 },
    );
  });
});
