import { chromium } from 'playwright-core';
import { quietFlags } from '../support/quiet-flags.ts';
import { type DecodeRow, OURS } from './decode.ts';
import { launchedPage, until } from './slow-page.ts';
import type { Figure } from './table.ts';

/** ms from a frame to its answer, however the phone is slowed; the bound. */
const ANSWER_MS = 100;
/** ms the page may be kept from answering a finger while a look goes on. */
const HELD_UP_MS = 50;

/** Labels read by each reader over all hardships together, and ours against the best of the others on the same pictures. */
export function labelFigures(rows: readonly DecodeRow[]): Figure[] {
  const mean = (some: readonly DecodeRow[], of: (row: DecodeRow) => number) => some.reduce((sum, row) => sum + of(row), 0) / some.length;
  const readers = [...new Set(rows.map(({ reader }) => reader))];
  const labels = [...new Set(rows.map(({ label }) => label))];
  const share = (reader: string) =>
    mean(
      rows.filter((row) => row.reader === reader),
      (row) => row.read,
    );
  const told = labels.flatMap((label) =>
    readers.map((reader): Figure => {
      const group = rows.filter((row) => row.label === label && row.reader === reader);
      const ms = mean(group, (row) => row.medianMs).toFixed(1);
      return { name: `labels read: ${label}, ${reader}`, value: 100 * mean(group, (row) => row.read), unit: '%', note: `${ms} ms each` };
    }),
  );
  const others = readers.filter((reader) => reader !== OURS && reader !== 'quick');
  const best = others.reduce((most, reader) => (share(reader) > share(most) ? reader : most));
  const wrong = rows.filter((row) => row.reader === OURS || row.reader === 'quick').reduce((sum, row) => sum + row.wrong, 0);
  return [
    ...told,
    { name: 'labels read by the best other reader against ours', value: share(best) / share(OURS), unit: '×', bound: 1, note: best },
    { name: 'labels read as something else by ours', value: wrong, unit: '', bound: 0 },
    aheadOfOurs(rows, others),
  ];
}

/** In how many hardships, set by set, another reader reads more than ours; which they are is in the note. */
function aheadOfOurs(rows: readonly DecodeRow[], others: readonly string[]): Figure {
  const sets = new Map<string, DecodeRow[]>();
  for (const row of rows) {
    const set = `${row.category} (set ${row.seed})`;
    sets.set(set, [...(sets.get(set) ?? []), row]);
  }
  const read = (some: readonly DecodeRow[], reader: string) => some.reduce((sum, row) => sum + (row.reader === reader ? row.read : 0), 0);
  const lost = [...sets].flatMap(([set, some]) => {
    const ahead = others.filter((other) => read(some, other) > read(some, OURS));
    return ahead.length > 0 ? [`${set}: ${ahead.join(', ')}`] : [];
  });
  return { name: 'hardships in which another reader is ahead of ours', value: lost.length, unit: '', bound: 0, note: lost.join('; ') };
}

/** From a camera's frame that shows a clear label to its text, its neighbours looked for too. On the bench's page, slowed down. */
export async function firstAnswer(url: string, chrome: string, slowdown: number): Promise<Figure[]> {
  const browser = await chromium.launch({ executablePath: chrome, args: quietFlags });
  try {
    const page = await launchedPage(await browser.newContext(), slowdown);
    await page.goto(`${url}bench/`);
    await until(page, 'window.bench');
    const { reckoned, reckonedFromPixels, there, heldUp } = await page.evaluate(() => window.bench.answerLabel(25));
    const ms = (value: number) => `${value.toFixed(1)} ms`;
    return [
      {
        name: 'a clear label: from the frame to its answer',
        value: reckoned + there,
        unit: 'ms',
        bound: ANSWER_MS,
        note: `1280 × 720, ${slowdown}×; reckoned ${ms(reckoned)} (from pixels ${ms(reckonedFromPixels)}), through the worker, which is not slowed, ${ms(there)}`,
      },
      { name: 'a clear label: the page held up by a look', value: heldUp, unit: 'ms', bound: HELD_UP_MS, note: `${slowdown}×` },
    ];
  } finally {
    await browser.close();
  }
}

/** Of each hardship, how many in a hundred each reader read, both forms of label together, a table for each set: where the labels are lost. */
export function hardshipTables(rows: readonly DecodeRow[]): string {
  const seeds = [...new Set(rows.map(({ seed }) => seed))];
  return seeds.map((seed) => `set ${seed}\n${hardshipTable(rows.filter((row) => row.seed === seed))}`).join('\n\n');
}

function hardshipTable(rows: readonly DecodeRow[]): string {
  const readers = [...new Set(rows.map(({ reader }) => reader))];
  const categories = [...new Set(rows.map(({ category }) => category))];
  const wide = Math.max(...categories.map((category) => category.length));
  const lines = categories.map((category) => {
    const shares = readers.map((reader) => {
      const group = rows.filter((row) => row.category === category && row.reader === reader);
      const read = group.reduce((sum, row) => sum + row.read, 0) / group.length;
      return `${Math.round(100 * read)} %`.padStart(reader.length);
    });
    return [category.padEnd(wide), ...shares].join('  ');
  });
  return [['labels read'.padEnd(wide), ...readers].join('  '), ...lines].join('\n');
}
