import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { makeProfile, removeProfile } from '../support/launch.ts';
import { quietFlags } from '../support/quiet-flags.ts';
import type { Searching, Work } from './peers-page.ts';
import { until } from './slow-page.ts';
import type { StudioSize } from './studio.ts';
import type { Figure } from './table.ts';

/** Does the same work with our store and with general ones, in the same browser, one after another; ratios below 1 are ours ahead. */
export async function benchPeers(url: string, chrome: string, sizes: readonly StudioSize[]): Promise<readonly Figure[]> {
  const profile = makeProfile();
  const context = await chromium.launchPersistentContext(profile, { executablePath: chrome, args: quietFlags });
  try {
    const ours = await inPage(context, url, (page) => page.evaluate((s) => window.peers.ours(s), sizes));
    const count = await inPage(context, url, (page) => page.evaluate(() => window.peers.count));
    const figures: Figure[] = [];
    for (let at = 0; at < count; at++) {
      const theirs = await inPage(context, url, (page) => page.evaluate(([i, s]) => window.peers.peer(i, s), [at, sizes] as const));
      figures.push(...beside(ours, theirs));
    }
    const size = sizes.at(-1) as StudioSize;
    const { ours: own, mini } = await inPage(context, url, (page) => page.evaluate((s) => window.peers.searches(s), size));
    return [...figures, ...searches(own, mini)];
  } finally {
    await context.close();
    removeProfile(profile);
  }
}

/** Each store in a page of its own, so that none works in the memory another has filled. */
async function inPage<T>(context: BrowserContext, url: string, job: (page: Page) => Promise<T>): Promise<T> {
  const page = await context.newPage();
  try {
    await page.goto(`${url}bench/peers.html`);
    await until(page, 'window.peers');
    return await job(page);
  } finally {
    await page.close();
  }
}

/** Said where ours is not ahead. */
const WHY = {
  restoring: 'ours also sums every entry and writes that sum',
  loading: 'ours also finds out what stands in each place',
  finding: 'ours also ranks what it finds',
  logging: 'ours also plans, checks every field and sums the entry before it is shown, and looks for other tabs within the write',
  slip: 'ours compares with every word there is, so that none goes without an answer',
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

function beside(ours: Work, theirs: Work): Figure[] {
  // The largest restore that this store had the patience for, against ours of the same size.
  const last = theirs.restored.at(-1);
  const same = ours.restored.find(({ entries }) => entries === last?.entries);
  if (!last || !same) throw new Error(`${theirs.name} restored nothing`);
  const isPart = last.entries < (ours.restored.at(-1)?.entries ?? 0);
  return [
    ratio(
      `beside ${theirs.name}: restoring ${last.entries.toLocaleString('en-GB')} entries`,
      same.ms,
      last.ms,
      WHY.restoring,
      isPart ? 'ten times as many would take it too long' : '',
    ),
    ratio(`beside ${theirs.name}: loading ${theirs.things.toLocaleString('en-GB')} things`, ours.load, theirs.load, WHY.loading),
    ratio(`beside ${theirs.name}: finding a word`, ours.find, theirs.find, WHY.finding),
    ratio(`beside ${theirs.name}: logging a run`, ours.log, theirs.log, WHY.logging),
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
