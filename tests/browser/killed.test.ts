import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { KILLS, LONG_MS, SEED } from '../support/amount.ts';
import { makeProfile, openApp, removeProfile } from '../support/browser.ts';
import { chance } from '../support/chance.ts';
import { damageDatabase, tearLog } from '../support/damage-database.ts';
import { type Killable, launchKillable } from '../support/killable.ts';
import type {} from '../support/killed-page.ts';
import { serveTestPage } from '../support/test-page.ts';

let site: Awaited<ReturnType<typeof serveTestPage>>;
let profile = '';
let isProved = false;
beforeAll(async () => {
  site = await serveTestPage('tests/support/killed-page.ts');
  profile = makeProfile();
});
afterAll(async () => {
  await site.stop();
  // What was lost, and whether the browser or we lost it, can only be told from what lies there.
  if (isProved) removeProfile(profile);
  else console.error(`The profile is kept at ${profile}`);
});

/** A big journal takes long to look through, so each studio is killed in a few times only; the last one is the app's own. */
const KILLS_A_STUDIO = 5;
const studioOf = (kill: number) => (kill >= KILLS - KILLS_A_STUDIO ? 'mouldkeep' : `studio-${Math.floor(kill / KILLS_A_STUDIO)}`);

/** Before this one the database is damaged as well: the browser then throws all of it away. */
const DAMAGED = 8;
/** Before one in so many a log of the database is torn: that it must get over. */
const TORN_EACH = 4;
/** How often it may throw all away by itself at most: once in 800 kills it did, even with a fresh log at each opening, which it begins late when it is busy. */
const THROWN_AWAY = KILLS / 10;
/** Of what is gone, named one by one. */
const LINES = 20;

/** What is known of one studio from outside. */
interface Known {
  /** What was shown as saved. */
  readonly saved: Set<string>;
  /** What of that was there when it was last looked at, and so is in the second copy. */
  copied: ReadonlySet<string>;
  /** How often the browser has thrown its database away, and the pictures with it. */
  thrownAway: number;
}

interface Round {
  readonly studio: string;
  readonly tabs: number;
  readonly seed: number;
  /** How long it may write. */
  readonly ms: number;
}

async function openPage({ context }: Killable) {
  const page = await context.newPage();
  await page.goto(site.page);
  return page;
}

/** Whether the studio is as the last kill must have left it: a line for each thing that is not. */
async function look(browser: Killable, studio: string, known: Known): Promise<readonly string[]> {
  const page = await openPage(browser);
  const found = await page.evaluate((name) => window.killed.look(name), studio);
  const there = new Set(found.ids);
  let gone = [...known.saved].filter((id) => !there.has(id));
  if (found.isNew && known.saved.size > 0) {
    // Where it was not yet copied either, nothing can bring it back, nor tell the studio of it.
    const copy = found.rescued ? `the second copy brought back ${there.size} entries` : 'there was no second copy yet';
    console.warn(`The browser threw ${studio} away; ${copy}, and ${gone.length} saved since are gone`);
    known.thrownAway++;
    for (const id of gone) known.saved.delete(id);
    gone = gone.filter((id) => known.copied.has(id));
  }
  known.copied = new Set(known.saved);
  const unread = found.rescued?.unread ?? 0;
  const wrong = [...found.wrong, ...(known.thrownAway > 0 ? [] : found.picturesGone)];
  if (unread > 0) wrong.push(`${unread} of the second copy of ${studio} could not be read`);
  if (gone.length === 0) return wrong;
  const all = `${gone.length} of ${known.saved.size} that were shown as saved are gone from ${studio}, which has ${there.size} entries`;
  return [...wrong, all, ...gone.slice(0, LINES).map((id) => `${id} is gone`)];
}

/** Looks at the studio, writes on in it, and kills the browser in the midst of that. */
async function killed({ studio, tabs, seed, ms }: Round, known: Known): Promise<readonly string[]> {
  const { saved } = known;
  const browser = await launchKillable(inject('chrome'), profile);
  try {
    await browser.context.exposeFunction('saved', (ids: readonly string[]) => {
      for (const id of ids) saved.add(id);
    });
    const wrong = await look(browser, studio, known);
    const pages = await Promise.all(Array.from({ length: tabs }, () => openPage(browser)));
    const ends = pages.map((page, tab) =>
      page
        .evaluate(([name, from]) => window.killed.write(name, from), [studio, seed + tab] as const)
        .then(
          () => 'it stopped writing',
          (error: Error) => (/closed|crashed/i.test(error.message) ? '' : error.message),
        ),
    );
    const before = saved.size;
    await new Promise((resolve) => setTimeout(resolve, ms));
    // Also on a machine that takes longer than that to begin, some kills find it well at work.
    if (seed % 20 < 10) await expect.poll(() => saved.size).toBeGreaterThan(before + KILLS_A_STUDIO);
    await browser.kill();
    return [...wrong, ...(await Promise.all(ends)).filter((end) => end !== '')];
  } finally {
    await browser.kill();
  }
}

test(
  `the browser killed ${KILLS} times while it writes: what was shown as saved is there, and nothing is half`,
  async () => {
    const next = chance(SEED);
    const studios = new Map<string, Known>();
    let byItself = 0;
    for (let kill = 0; kill < KILLS; kill++) {
      const studio = studioOf(kill);
      const known = studios.get(studio) ?? { saved: new Set(), copied: new Set(), thrownAway: 0 };
      studios.set(studio, known);
      if (kill === DAMAGED) damageDatabase(profile);
      else if (kill % TORN_EACH === 1) tearLog(profile);
      const round = { studio, tabs: kill % 3 === 2 ? 2 : 1, seed: SEED + 10 * kill, ms: 40 + Math.floor(next() * 400) };
      const before = known.thrownAway;
      expect(await killed(round, known), `kill ${kill}, MOULDKEEP_SEED=${SEED}`).toEqual([]);
      if (kill !== DAMAGED) byItself += known.thrownAway - before;
    }
    const browser = await launchKillable(inject('chrome'), profile);
    try {
      for (const [studio, known] of studios) {
        expect(known.saved.size).toBeGreaterThan(KILLS_A_STUDIO);
        expect(await look(browser, studio, known), `at the end, MOULDKEEP_SEED=${SEED}`).toEqual([]);
      }
      expect(studios.get(studioOf(DAMAGED))?.thrownAway).toBeGreaterThan(0);
      expect(byItself).toBeLessThanOrEqual(THROWN_AWAY);
    } finally {
      await browser.kill();
    }
    const app = await openApp({ url: site.url, profile, path: '#/where?q=mould' });
    await app.page.getByText('Mould 0.').first().waitFor();
    app.assertQuiet();
    await app.close();
    isProved = true;
  },
  LONG_MS,
);
