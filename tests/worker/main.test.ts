import { beforeAll, beforeEach, expect, test, vi } from 'vitest';
import type { Day, MouldId } from '../../src/domain/brand.ts';
import { guessColumns } from '../../src/domain/csv/guess.ts';
import { knownOf } from '../../src/domain/csv/known.ts';
import { makeJournal } from '../../src/domain/journal.ts';
import { traceFrom } from '../../src/domain/lineage/trace.ts';
import { EMPTY_SHELF } from '../../src/domain/shelf.ts';
import { forecastAll, sumLives } from '../../src/domain/survival/life-sums.ts';
import { packForecasts, packLives, packMoulds, unpackForecasts } from '../../src/domain/survival/packed.ts';
import type { Reply, Request } from '../../src/worker/protocol.ts';
import { aJournal } from '../support/entry-builders.ts';
import { planImport, tableOf } from '../support/import.ts';

const TODAY = '2026-11-25' as Day;
const ROWS = 1200;
const LIST = ['Mould no;Design;Shots', ...Array.from({ length: ROWS }, (_, i) => `K-${i};Motif ${i % 9};${i}`)].join('\n');

/** The worker's own scope, as far as it uses it. */
const replies: Reply[] = [];
let listener: (event: { readonly data: unknown }) => void = () => undefined;

beforeAll(async () => {
  vi.stubGlobal('self', {
    postMessage: (message: Reply) => replies.push(structuredClone(message)),
    addEventListener: (_: 'message', heard: typeof listener) => {
      listener = heard;
    },
  });
  await import('../../src/worker/main.ts');
});
beforeEach(() => {
  replies.length = 0;
});

function ask(request: Request): Reply[] {
  listener({ data: structuredClone(request) });
  return replies;
}

test('the head of a list: how its cells are parted, its first rows, and how many there are', () => {
  const head = ask({ job: 'head', asks: { text: LIST } });
  const rows = [['Mould no', 'Design', 'Shots'], ...[0, 1, 2, 3, 4].map((i) => [`K-${i}`, `Motif ${i}`, `${i}`])];
  expect(head).toMatchObject([{ answer: { delimiter: ';', total: ROWS + 1, rows: rows.map((cells) => ({ cells })) } }]);
});

test('a list is planned as it would be in the page, with words about progress before the one answer', () => {
  const table = tableOf(LIST);
  const reading = { target: 'mould', mapping: guessColumns(table.rows[0]?.cells ?? [], 'mould'), hasHeadings: true } as const;
  const known = knownOf(EMPTY_SHELF);
  const told = ask({ job: 'import', asks: { text: LIST, known, reading, today: TODAY } });
  const progress = told.slice(0, -1).map((each) => ('progress' in each ? each.progress : undefined));
  expect(progress.length).toBeGreaterThan(1);
  expect(progress.every((each) => each?.total === ROWS)).toBe(true);
  expect(progress.map((each) => each?.done)).toEqual(progress.map((each) => each?.done ?? 0).toSorted((a, b) => a - b));
  expect(told.at(-1)).toEqual({ answer: structuredClone(planImport(known, table, reading, TODAY)) });
});

test('a journal saved as text is opened as a backup is, in its own time', async () => {
  const entries = aJournal();
  ask({ job: 'backup', asks: { file: new Blob([makeJournal('Quay', entries)]), isOnlyChecked: false } });
  await vi.waitFor(() => expect(replies.at(-1)).toMatchObject({ answer: { name: 'Quay', entries: [] } }));
  // Some at a time, so that the page is never long at taking them in.
  expect(replies.flatMap((reply) => ('entries' in reply ? reply.entries : []))).toEqual(entries);
});

test('a backup that cannot be read at all is answered in words', async () => {
  ask({ job: 'backup', asks: { file: null, isOnlyChecked: false } as never });
  await vi.waitFor(() => expect(replies).toMatchObject([{ answer: { says: 'The backup could not be worked through.' } }]));
});

test('lives are summed and moulds forecast as they would be in the page; a belief already known is not made again', () => {
  const lives = {
    lives: [
      { shots: 40, isEnd: true },
      { shots: 95, isEnd: false },
    ],
    expected: [80, 80],
  };
  const moulds = [
    { sum: 0, shots: 60, expected: 80, more: 10 },
    { sum: 1, shots: 12, expected: 100, more: 30 },
    { sum: 0, shots: 60, expected: 80, more: 10 },
  ];
  const sum = sumLives(lives);
  const [told] = ask({
    job: 'life',
    asks: { sums: [{ lives: packLives(lives) }, { posterior: sum.posterior }], moulds: packMoulds(moulds) },
  });
  const forecasts = forecastAll([sum.posterior, sum.posterior], moulds);
  expect(told).toEqual({ answer: { sums: [structuredClone(sum), undefined], forecasts: packForecasts(forecasts) } });
  expect(unpackForecasts(packForecasts(forecasts))).toEqual(forecasts);
  expect(forecasts[2]).toEqual(forecasts[0]);
});

test.each([
  ['head', { text: '' }, /nothing in that list/],
  // What breaks the work is told, so that the page does not wait for ever.
  ['import', { text: LIST, known: null, reading: { hasHeadings: true }, today: TODAY }, /could not be worked through/],
] as const)('what cannot be read is answered in words: %s', (job, asks, says) => {
  const [answer, ...more] = ask({ job, asks } as unknown as Request);
  expect(more).toEqual([]);
  expect(answer).toMatchObject({ answer: { says: expect.stringMatching(says), kept: expect.stringMatching(/Nothing was changed/) } });
});

test('a mould’s waxes are traced through rows of the journal, with words about progress; a row that is none comes back as a Problem', async () => {
  const entries = aJournal();
  const rows = [entries.slice(0, 3), entries.slice(3)].map((part) => new Blob([JSON.stringify(part)]));
  const mould = entries.find((entry) => entry.kind === 'injected')?.mould;
  const from = { mould: mould as MouldId };
  ask({ job: 'trace', asks: { rows, from } });
  const answer = traceFrom(entries, from);
  expect(answer.made.most).toBeGreaterThan(0);
  await vi.waitFor(() => expect(replies).toEqual([{ progress: { done: 1, total: 2 } }, { progress: { done: 2, total: 2 } }, { answer }]));
  replies.length = 0;
  ask({ job: 'trace', asks: { rows: [new Blob(['[{'])], from } });
  await vi.waitFor(() => expect(replies).toMatchObject([{ answer: { says: 'The journal could not be worked through.' } }]));
});
