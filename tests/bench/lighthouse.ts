import { createServer } from 'node:net';
import lighthouse from 'lighthouse';
import { chromium } from 'playwright-core';
import { quietFlags } from '../support/quiet-flags.ts';
import type { Figure } from './table.ts';

const LEAST = 98;
const CATEGORIES = ['performance', 'accessibility', 'best-practices'] as const;
const PAGES = [
  ['the doors', ''],
  ['the demo’s shelves', '?demo'],
] as const;

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, 'localhost', () => {
      const address = server.address();
      server.close(() => (address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port is free'))));
    });
  });
}

/** Lighthouse's own verdict on the built app, as a phone with its usual slow network would load it for the first time. */
export async function benchLighthouse(url: string, chrome: string): Promise<Figure[]> {
  const port = await freePort();
  const browser = await chromium.launch({ executablePath: chrome, args: [...quietFlags, `--remote-debugging-port=${port}`] });
  try {
    const figures: Figure[] = [];
    for (const [what, query] of PAGES) {
      const result = await lighthouse(`${url}${query}`, { port, output: 'json', logLevel: 'error', onlyCategories: [...CATEGORIES] });
      if (!result) throw new Error('Lighthouse gave no result');
      const { audits, categories } = result.lhr;
      for (const category of CATEGORIES) {
        const judged = categories[category];
        const short = (judged?.auditRefs ?? []).filter(({ id, weight }) => weight > 0 && (audits[id]?.score ?? 1) < 1);
        figures.push({
          name: `Lighthouse ${result.lhr.lighthouseVersion}, ${category}: ${what}`,
          value: Math.round(100 * (judged?.score ?? Number.NaN)),
          unit: '%',
          least: LEAST,
          note: short.map(({ id }) => `${id} ${audits[id]?.displayValue ?? ''}`.trim()).join(', '),
        });
      }
    }
    return figures;
  } finally {
    await browser.close();
  }
}
