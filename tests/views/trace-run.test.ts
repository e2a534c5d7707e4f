import { afterEach, expect, it, vi } from 'vitest';
import type { DoubtFrom } from '../../src/domain/lineage/trace.ts';
import { journalBlobs, runTrace } from '../../src/views/trace-run.ts';
import { SOME } from '../support/entry-builders.ts';

const started: { rows: readonly Blob[]; from: DoubtFrom }[] = [];
const ended = vi.fn();
vi.mock('../../src/device/worker-client.ts', () => ({
  startJob: (_: 'trace', asks: (typeof started)[number]) => {
    started.push(asks);
    return { answer: new Promise(() => undefined), cancel: ended };
  },
}));
afterEach(() => {
  started.length = 0;
  ended.mockClear();
});

const from: DoubtFrom = { mould: SOME.mould };
const keeperOf = (texts: readonly string[], failsAt = Number.POSITIVE_INFINITY) => ({
  async *journalTexts() {
    for (const [at, text] of texts.entries()) {
      if (at === failsAt) throw new Error('the page is gone');
      yield text;
    }
  },
});

it('hands the journal’s rows to the worker as they are, and ends it when it is called off', async () => {
  const run = runTrace(journalBlobs(keeperOf(['[1]', '[2]'])), from, () => undefined);
  await vi.waitFor(() => expect(started).toHaveLength(1));
  expect(await Promise.all((started[0]?.rows ?? []).map((row) => row.text()))).toEqual(['[1]', '[2]']);
  expect(started[0]?.from).toBe(from);
  run.cancel();
  expect(ended).toHaveBeenCalledTimes(1);
});

it('says so when a row of the journal cannot be read, and starts nothing', async () => {
  const run = runTrace(journalBlobs(keeperOf(['[1]', '[2]'], 1)), from, () => undefined);
  expect(await run.trace).toMatchObject({ says: 'The journal could not be read.' });
  expect(started).toEqual([]);
});

it('starts nothing when it is called off while the rows are read', async () => {
  const run = runTrace(journalBlobs(keeperOf(['[1]'])), from, () => undefined);
  run.cancel();
  expect(await run.trace).toBeUndefined();
  expect(started).toEqual([]);
});
