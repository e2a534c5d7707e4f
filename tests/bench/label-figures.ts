import type { BrowserContext } from 'playwright-core';
import { type DecodeRow, OURS } from './decode.ts';
import { launchedPage, until } from './slow-page.ts';
import type { Figure } from './table.ts';

/** ms from a frame to its answer, however the phone is slowed; the bound. */
const ANSWER_MS = 100;

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
    { name: 'labels read as something else by ours', value: (100 * wrong) / rows.length, unit: '%', bound: 0 },
  ];
}

/** From a camera's frame that shows a clear label to its text, its neighbours looked for too. On the bench's page, slowed down. */
export async function firstAnswer(context: BrowserContext, url: string, slowdown: number): Promise<Figure> {
  const page = await launchedPage(context, slowdown);
  await page.goto(`${url}bench/`);
  await until(page, 'window.bench');
  const ms = await page.evaluate(() => window.bench.answerLabel(15));
  await page.close();
  return { name: 'a clear label: from the frame to its answer', value: ms, unit: 'ms', bound: ANSWER_MS, note: `1280 × 720, ${slowdown}×` };
}
