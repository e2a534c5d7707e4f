import { openTexts } from '../../src/device/texts.ts';
import type { EntryId, Sha256, ThingId } from '../../src/domain/brand.ts';
import { makeEntryId } from '../../src/domain/clock.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { planLogRun } from '../../src/domain/plans/log-run.ts';
import { planRecord } from '../../src/domain/plans/record.ts';
import { planWithdraw } from '../../src/domain/plans/withdraw.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Keeper, MakePlan } from '../../src/store/keeper.ts';
import { RESCUED } from '../../src/store/schema.ts';
import type { Rescued } from '../../src/store/second-copy.ts';
import { chance } from './chance.ts';
import { pageKeeper } from './page-keeper.ts';
import { shelfText } from './plain-shelf.ts';

/** Told outside, one id an action, once the shelf that is shown has it. */
type Saved = (ids: readonly string[]) => Promise<void>;

const BATCHES = [1, 2, 12, 40] as const;
const partOf = (count: number) => `one of ${count}`;

/** What is half, doubled, or not the sum of the journal. */
async function faults(keeper: Keeper, journal: readonly Entry[]): Promise<string[]> {
  const wrong: string[] = [];
  const ids = new Set(journal.map((entry) => entry.id));
  if (ids.size !== journal.length) wrong.push(`${journal.length - ids.size} entries are there twice`);
  const actions = new Map<EntryId, Entry[]>();
  for (const entry of journal) {
    const first = entry.step ?? entry.id;
    actions.set(first, [...(actions.get(first) ?? []), entry]);
  }
  for (const [first, entries] of actions) {
    const [entry] = entries;
    const expected = entry?.kind === 'recorded' ? entry.fields.note : undefined;
    if (expected?.startsWith('one of') && expected !== partOf(entries.length))
      wrong.push(`of the action ${first}, ${expected}, ${entries.length} are there`);
    if (!ids.has(first)) wrong.push(`the first entry of the action ${first} is gone`);
  }
  if (shelfText(keeper.shelf()) !== shelfText(foldAll(journal))) wrong.push('the stored shelf is not the sum of the journal');
  return wrong;
}

/** Whole pictures and thumbnails that entries name and that are not there. */
async function picturesGone(keeper: Keeper, journal: readonly Entry[]): Promise<string[]> {
  const wrong: string[] = [];
  for (const sha of journal.flatMap((entry) => entry.pictures ?? [])) {
    for (const size of ['whole', 'thumb'] as const)
      if (!(await keeper.picture(sha, size))) wrong.push(`the ${size} picture ${sha} is gone`);
  }
  return wrong;
}

async function aPicture(keeper: Keeper, next: () => number): Promise<Sha256> {
  const sha = Array.from({ length: 64 }, () => Math.floor(next() * 16).toString(16)).join('') as Sha256;
  const bytes = new Uint8Array(20_000 + Math.floor(next() * 60_000)).fill(7).buffer;
  const failed = await keeper.keepPictures([{ sha, type: 'image/jpeg', bytes, thumb: { type: 'image/jpeg', bytes: bytes.slice(0, 900) } }]);
  if (failed) throw new Error(failed.says);
  return sha;
}

/** What another phone wrote: never in order with our own entries. */
function others(next: () => number): Entry[] {
  const ms = Date.now() - Math.floor(next() * 3_000_000);
  return Array.from(
    { length: 40 },
    (_, count) =>
      ({
        kind: 'recorded',
        id: makeEntryId({ ms, count }, 'THE1RS'),
        on: '2024-05-06',
        noun: 'design',
        fields: { name: 'Theirs' },
      }) as Entry,
  );
}

async function writeOne(keeper: Keeper, next: () => number): Promise<readonly string[]> {
  const moulds = [...keeper.shelf().things.mould.keys()];
  const one = moulds[Math.floor(next() * moulds.length)];
  const turn = next();
  if (turn < 0.04) {
    const theirs = others(next);
    const joined = await keeper.join(theirs);
    if (isProblem(joined)) throw new Error(joined.says);
    return theirs.map((entry) => entry.id);
  }
  if (turn < 0.06) {
    await keeper.refold();
    return [];
  }
  let plan: MakePlan;
  if (one && turn < 0.5) plan = (shelf, desk) => planLogRun(shelf, desk, { mould: one, shots: 5, confirmed: true });
  else if (one && turn < 0.6) {
    const { entries } = await keeper.history(one as string as ThingId, 1);
    const [newest] = entries;
    if (!newest || newest.kind === 'recorded') return [];
    plan = (shelf, desk) => planWithdraw(shelf, desk, { entry: newest, whole: [newest], confirmed: true });
  } else {
    const count = BATCHES[Math.floor(next() * BATCHES.length)] ?? 1;
    const pictures = next() < 0.3 ? [await aPicture(keeper, next)] : undefined;
    const fields = { name: `Mould ${next()}`, note: partOf(count) };
    plan = (shelf, desk) => planRecord(shelf, desk, { noun: 'mould', fields, count, pictures, confirmed: true });
  }
  const entries = await keeper.act(plan);
  if (isProblem(entries)) throw new Error(`${entries.says} ${entries.kept}`);
  return entries.map((entry) => entry.id);
}

/** What one look found. */
export interface Look {
  /** Every entry that is there. */
  readonly ids: readonly string[];
  /** What is wrong with them. */
  readonly wrong: readonly string[];
  readonly picturesGone: readonly string[];
  /** There was no database of this name: it is the first look, or the browser threw it away. */
  readonly isNew: boolean;
  /** The browser had thrown the database away, and this is what the second copy brought back. */
  readonly rescued: Rescued | undefined;
}

const textsOf = (studio: string) => openTexts(`second-copy-of-${studio}`);

const killed = {
  /** Looks at everything, and brings the second copy up to date with it. */
  async look(studio: string): Promise<Look> {
    // Rejects where it finds damage, and has then thrown everything away.
    const isNew = await indexedDB.databases().then(
      (all) => all.every(({ name }) => name !== studio),
      () => true,
    );
    const keeper = await pageKeeper(studio, { texts: textsOf(studio) });
    const journal = await keeper.journal();
    const wrong = await faults(keeper, journal);
    const gone = await picturesGone(keeper, journal);
    const rescued = (await keeper.recall(RESCUED)) as Rescued | undefined;
    await keeper.remember(RESCUED, undefined);
    await keeper.writeCopy();
    keeper.close();
    return { ids: journal.map((entry) => entry.id), wrong, picturesGone: gone, isNew, rescued };
  },

  /** Writes one action after another until the end comes, and seals far more often than the app does: most kills are to find it at that. */
  async write(studio: string, seed: number): Promise<void> {
    const next = chance(seed);
    const keeper = await pageKeeper(studio, { whenIdle: (job) => setTimeout(job, 5), texts: textsOf(studio) });
    for (;;) {
      const ids = await writeOne(keeper, next);
      if (ids.length > 0) void window.saved(ids);
      if (next() < 0.6) await keeper.seal();
    }
  },
};

declare global {
  interface Window {
    killed: typeof killed;
    saved: Saved;
  }
}
window.killed = killed;
