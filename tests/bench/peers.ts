import type { BrowserContext, Page } from 'playwright-core';
import { patiently, Stopped } from './patience.ts';
import type { Restored, Searching, Used } from './peers-page.ts';
import { type Bench, onPhone } from './phone.ts';
import { until } from './slow-page.ts';
import type { StudioSize } from './studio.ts';
import type { Figure } from './table.ts';

/** A store that has not restored the journal by then is asked for a tenth of it. */
const RESTORE_PATIENCE_MS = 300_000;
const PATIENCE_MS = 180_000;

/** What one store did, or did not within its time. */
interface Work {
  readonly name: string;
  readonly restored: Restored | Stopped;
  readonly used: Used | Stopped;
  /** Entries that lay in the store while it was used. */
  readonly beside: number;
}

/** Does the same work with our store and with general ones, in the same browser, one after another; ratios below 1 are ours ahead. */
export function benchPeers(bench: Bench, whole: StudioSize, tenth: StudioSize): Promise<readonly Figure[]> {
  return onPhone(bench, async (context) => {
    const inPage: InPage = (ms, job) => freshPage(context, bench.url, ms, job);
    const ours = await ownWork(inPage, whole);
    const names = await inPage(PATIENCE_MS, (page) => page.evaluate(() => window.peers.names));
    if (names instanceof Stopped) throw new Error(names.says);
    const figures: Figure[] = [];
    for (const [at, name] of names.entries()) {
      const theirs = await peerWork(inPage, at, name, whole, tenth);
      console.log(said(theirs));
      figures.push(...beside(ours, theirs));
    }
    const asked = await inPage(PATIENCE_MS, (page) => page.evaluate((s) => window.peers.searches(s), whole));
    if (asked instanceof Stopped) throw new Error(asked.says);
    return [...figures, ...searches(asked.ours, asked.mini)];
  });
}

type InPage = <T>(ms: number, job: (page: Page) => Promise<T>) => Promise<T | Stopped>;

/** Each job in a page of its own, so that none works in the memory another has filled; closing it also ends a job that takes too long. */
async function freshPage<T>(context: BrowserContext, url: string, ms: number, job: (page: Page) => Promise<T>): Promise<T | Stopped> {
  const page = await context.newPage();
  try {
    await page.goto(`${url}bench/peers.html`);
    await until(page, 'window.peers');
    return await patiently(page, ms, job);
  } finally {
    await page.close();
  }
}

async function ownWork(inPage: InPage, whole: StudioSize): Promise<{ restored: Restored; used: Used }> {
  const restored = await inPage(PATIENCE_MS, (page) => page.evaluate((s) => window.peers.restoreOurs(s), whole));
  const used = await inPage(PATIENCE_MS, (page) => page.evaluate((s) => window.peers.useOurs(s), whole));
  if (restored instanceof Stopped || used instanceof Stopped) throw new Error('our own store did not finish');
  console.log(said({ name: 'Mouldkeep', restored, used, beside: whole.entries }));
  return { restored, used };
}

async function peerWork(inPage: InPage, at: number, name: string, whole: StudioSize, tenth: StudioSize): Promise<Work> {
  const restore = (size: StudioSize) =>
    inPage(RESTORE_PATIENCE_MS, (page) => page.evaluate(([i, s]) => window.peers.restore(i, s), [at, size] as const));
  const restored = await restore(whole);
  // The rest of the work is then done beside fewer entries, which is to that store's advantage.
  const size = restored instanceof Stopped ? tenth : whole;
  const instead = restored instanceof Stopped ? await restore(tenth) : restored;
  const filled =
    instead instanceof Stopped
      ? instead
      : await inPage(PATIENCE_MS, (page) => page.evaluate(([i, s, w]) => window.peers.fill(i, s, w), [at, size, whole] as const));
  const used =
    filled instanceof Stopped
      ? filled
      : await inPage(PATIENCE_MS, (page) => page.evaluate(([i, s, w]) => window.peers.use(i, s, w), [at, size, whole] as const));
  return { name, restored, used, beside: size.entries };
}

function said({ name, restored, used, beside: entries }: Work): string {
  const took = restored instanceof Stopped ? restored.says : `${(restored.ms / 1000).toFixed(1)} s`;
  const rest =
    used instanceof Stopped
      ? used.says
      : `load ${used.load.toFixed(0)} ms, find ${used.find.toFixed(1)} ms, log ${used.log.toFixed(1)} ms, beside ${entries} entries`;
  return `${name}: restoring ${took}; ${rest}`;
}

/** Said where ours is not ahead. */
const WHY = {
  restoring: 'ours also sums every entry and writes that sum',
  loading: 'ours also finds out what stands in each place',
  finding: 'ours also looks inside words and among label codes, and ranks what it finds',
  logging: 'ours also plans, checks every field and sums the entry before it is shown, and looks for other tabs within the write',
  slip: 'ours compares with every word there is, and nine in ten are label codes; but none goes without an answer',
} as const;

function ratio(name: string, ours: number, theirs: number, why: string, more = ''): Figure {
  const note = [more, ours > theirs ? `not ahead: ${why}` : ''].filter(Boolean).join('; ');
  return {
    name,
    value: ours / theirs,
    unit: '×',
    note: [`${ours.toFixed(1)} ms against ${theirs.toFixed(1)} ms`, note].filter(Boolean).join('; '),
  };
}

/** At most this much of what the other store would have taken. */
function stopped(name: string, ours: number, { says, ms }: Stopped): Figure {
  return { name, value: ours / ms, unit: '×', note: `at most: ${ours.toFixed(1)} ms, the other ${says}` };
}

function beside(ours: { restored: Restored; used: Used }, { name, restored, used, beside: entries }: Work): Figure[] {
  const many = (count: number) => count.toLocaleString('en-GB');
  const restoring = `beside ${name}: restoring ${many(ours.restored.entries)} entries`;
  const first =
    restored instanceof Stopped
      ? stopped(restoring, ours.restored.ms, restored)
      : ratio(restoring, ours.restored.ms, restored.ms, WHY.restoring);
  const more = entries < ours.restored.entries ? `that store held ${many(entries)} entries` : '';
  const rest = [
    ['load', `loading ${many(ours.used.things)} things`, WHY.loading],
    ['find', 'finding a word', WHY.finding],
    ['log', 'logging a run', WHY.logging],
  ] as const;
  return [
    first,
    ...rest.map(([what, title, why]) =>
      used instanceof Stopped
        ? stopped(`beside ${name}: ${title}`, ours.used[what], used)
        : ratio(`beside ${name}: ${title}`, ours.used[what], used[what], why, more),
    ),
  ];
}

function searches(ours: Searching, mini: Searching): Figure[] {
  return [
    ratio('search beside minisearch 7.2.0: making the index', ours.build, mini.build, WHY.finding),
    ratio('search beside minisearch 7.2.0: a word', ours.query, mini.query, WHY.finding),
    ratio(
      'search beside minisearch 7.2.0: a word with a slip',
      ours.misspelt,
      mini.misspelt,
      WHY.slip,
      `${ours.missed} and ${mini.missed} of 7 not found`,
    ),
  ];
}
