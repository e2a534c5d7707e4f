import type { BrowserContext, Page } from 'playwright-core';
import { grownBy, type Held, held } from './memory.ts';

/** A long piece of work in the app, as somebody before the screen sees it. */
export interface Seen {
  readonly ms: number;
  readonly grown: Held;
  /** Moves of the bar that says how far it is. */
  readonly notices: number;
  /** The longest time without one, ms. */
  readonly silent: number;
  /** The longest task of the page, ms; nothing can be tapped meanwhile. */
  readonly blocked: number;
  /** When each sentence beside the bar came, ms. */
  readonly sentences: readonly (readonly [string, number])[];
}

interface Watch {
  blocked: number;
  notices: number[];
  sentences: [string, number][];
  began: number;
  stop(): void;
}

declare global {
  interface Window {
    benchWatch?: Watch;
  }
}

/** In the page: long tasks, and moves of the bar. */
function watch(): void {
  const found: Watch = { blocked: 0, notices: [], sentences: [], began: performance.now(), stop: () => undefined };
  const tasks = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) found.blocked = Math.max(found.blocked, duration);
  });
  tasks.observe({ type: 'longtask' });
  let last = '';
  const moves = new MutationObserver(() => {
    const says = document.querySelector('.working span')?.textContent ?? '';
    const now = performance.now() - found.began;
    if (says !== '') found.notices.push(now);
    if (says !== last) found.sentences.push([says, now]);
    last = says;
  });
  moves.observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ['value'] });
  found.stop = () => {
    tasks.disconnect();
    moves.disconnect();
  };
  window.benchWatch = found;
}

/** What the browser holds while nothing goes on in a page. */
export async function resting(context: BrowserContext, page: Page, profile: string): Promise<Held> {
  const session = await context.newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  await session.detach();
  return held(profile);
}

/** Does a job in a page of the app, from the tap to its end, and tells what was seen of it and how much more it held than `before`. */
export async function watched(page: Page, profile: string, before: Held, job: () => Promise<unknown>): Promise<Seen> {
  await page.evaluate(watch);
  const began = performance.now();
  const { grown } = await grownBy(profile, before, job);
  const ms = performance.now() - began;
  const { notices, blocked, sentences } = await page.evaluate(() => {
    const found = window.benchWatch as Watch;
    found.stop();
    return { notices: found.notices, blocked: found.blocked, sentences: found.sentences };
  });
  const stops = [0, ...notices, ms];
  const silent = Math.max(...stops.slice(1).map((at, i) => at - (stops[i] ?? 0)));
  return { ms, grown, notices: notices.length, silent, blocked, sentences };
}
