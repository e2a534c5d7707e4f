import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Sha256 } from '../../src/domain/brand.ts';
import { drawingOf } from '../../src/domain/drawing/drawing-of.ts';
import { did, firstStep, redone, type Steps, undone } from '../../src/domain/drawing/history.ts';
import { keptSteps } from '../../src/domain/drawing/kept.ts';
import { childrenOf } from '../../src/domain/nesting.ts';
import { planSaveDrawing } from '../../src/domain/plans/save-drawing.ts';
import { isProblem, problem } from '../../src/domain/problem.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { type DrawDraft, drawCommand, soundDraw, startDraw } from '../../src/ui/drawing/draft.ts';
import { heldInFronts } from '../../src/views/drawing-holds.ts';
import { LONG_MS } from '../support/amount.ts';
import { aDesk } from '../support/builders.ts';
import { demoShelf } from '../support/demo-moulds.ts';
import { anyDrawing, anyStep, orAsItWas } from '../support/drawings.ts';
import { forDraws } from '../support/draws.ts';
import type { Mutator } from '../support/mutate.ts';

const cabinet = [...demoShelf.things.place.values()].find(
  (place) => place.kind === 'cabinet' && (childrenOf(demoShelf).get(place.id) ?? []).length > 3,
);
if (!cabinet) throw new Error('the demo has no cabinet');

const [first = drawingOf(demoShelf, cabinet), ...more] = fc.sample(anyDrawing, { seed: 3, numRuns: 5 });
const steps: Steps = undone(more.reduce(did, did(firstStep(drawingOf(demoShelf, cabinet)), first)));
const start = startDraw(demoShelf, cabinet);
const drafts: readonly DrawDraft[] = [
  { ...start, steps },
  { ...start, steps: firstStep(first), name: 'East wall', photo: '', seen: 40 },
];
/** What is done with whatever was read. */
const doings = fc.sample(anyStep, { seed: 4, numRuns: 12 });

/** How many parts it has when it is written out; what stands in it thousands of times over is gone through once. */
function partsOf(value: unknown, known = new Map<object, number>()): number {
  if (typeof value !== 'object' || value === null) return 1;
  const before = known.get(value);
  if (before !== undefined) return before;
  const parts = Object.values(value).reduce((sum: number, part) => sum + partsOf(part, known), 0);
  known.set(value, parts);
  return parts;
}

/** More than this no browser keeps: a part is some ten letters, and there is room for five million. */
const PARTS_MAX = 500_000;
/** Larger ones, three in a hundred and nearly all the same part over and over, took nine tenths of the time to write out and read. */
const WRITTEN_MAX = 20_000;

/** As it lies in the browser's storage: the text of it damaged, or a part of it replaced. */
function damaged(mutator: Mutator): unknown {
  if (mutator.below(3) > 0) {
    const value = mutator.value(drafts);
    const parts = partsOf(value);
    if (parts > PARTS_MAX) return undefined;
    return parts > WRITTEN_MAX ? value : JSON.parse(JSON.stringify(value) ?? 'null');
  }
  try {
    return JSON.parse(mutator.text(drafts.map((draft) => JSON.stringify(draft))));
  } catch {
    return undefined;
  }
}

test('a whole draft comes back as it was, and of a damaged one the newest drawing that can be read', () => {
  expect(keptSteps(JSON.parse(JSON.stringify(steps)))).toEqual({ steps });
  const { past, future } = steps;
  const stepBefore = { past: past.slice(0, -1), now: past.at(-1), future: [] };
  expect(keptSteps({ past, now: { ...steps.now, fronts: [{}] }, future })).toEqual({ steps: stepBefore, lost: 'newest' });
  const fewer = { past: [past[0]], now: steps.now, future: [] };
  expect(keptSteps({ past: [null, past[0]], now: steps.now, future: 'x' })).toEqual({ steps: fewer, lost: 'others' });
  expect(keptSteps({ past: [], now: null, future: [steps.now] })).toBeNull();
});

test('what could not be read is told, and what was kept', () => {
  const typed = { ...start, name: 'East', photo: 'a'.repeat(64) as Sha256 };
  const read = (raw: Partial<Record<keyof DrawDraft, unknown>>) => soundDraw(cabinet)({ ...typed, ...(raw as object) }, start, raw);
  const { begun } = start;
  expect(read({ steps, begun })).toEqual({ values: { ...typed, steps }, problem: undefined });
  for (const raw of [{}, { steps }, { steps: {}, begun }, { steps, begun: { ...begun, fronts: [1] } }]) {
    expect(read(raw)).toEqual({
      values: typed,
      problem: problem('The unfinished drawing could not be read.', 'The cabinet is as it was, and drawing begins from how it stands.'),
    });
  }
  expect(soundDraw(undefined)(start, start, {}).problem?.kept).toBe('Your shelves are as they were, and drawing begins afresh.');
  expect(read({ steps: { ...steps, now: 1 }, begun }).problem?.says).toMatch(/^The last steps /);
  expect(read({ steps: { ...steps, past: [1] }, begun }).problem?.says).toMatch(/^Some steps /);
});

test(
  'whatever lies in the storage, the board opens with it, goes on with it, and saves it or says why not',
  () => {
    let looks = 0;
    forDraws(damaged, (raw) => {
      const kept = typeof raw === 'object' && raw !== null && !Array.isArray(raw) ? raw : {};
      const found = { ...start, ...kept } as DrawDraft;
      // Fields of other kinds are left out by every form; see `useDraft`.
      const textOf = (field: 'name' | 'room') => (typeof found[field] === 'string' ? found[field] : start[field]);
      const fitting = { ...found, name: textOf('name'), room: textOf('room'), newRoom: '', taken: [] };
      const { values: draft, problem: lost } = soundDraw(cabinet)(fitting, start, kept);
      if (draft.steps === start.steps) expect(lost?.says).toMatch(/could not be read/);
      const { now } = redone(undone(draft.steps));
      looks += 1;
      const tried = [0, 1, 2].flatMap((i) => doings[(3 * looks + i) % doings.length] ?? []);
      tried.reduce((drawing, step) => orAsItWas(step(drawing), drawing), now);
      // Saving looks through the whole studio, which takes longest.
      if (looks % 20 > 0) return;
      heldInFronts(demoShelf, now, [now.fronts[0]?.key ?? '']);
      const command = drawCommand(demoShelf, draft, cabinet, SI_UNITS);
      if (isProblem(command)) return;
      const saved = planSaveDrawing(demoShelf, aDesk(), command);
      if (isProblem(saved)) expect(saved.says).toMatch(/\S/);
    });
  },
  LONG_MS,
);
