import type { Shelf } from '../../src/domain/shelf.ts';
import { forecastAll, sumLives, type ToForecast } from '../../src/domain/survival/life-sums.ts';
import { expectedShotsOf, groupOf, livesByRubber, livesInSlices } from '../../src/domain/survival/rubber-lives.ts';
import { inTurns } from '../../src/ui/turns.ts';
import { sumLife } from '../../src/views/life-known.ts';

/** What reckoning the lives of all moulds costs, ms. */
export interface LifeTimes {
  readonly moulds: number;
  /** The sums themselves, done on the slowed page in place of the worker, which the slowdown does not reach. */
  readonly sums: number;
  /** From asking to the worker's answer, the gathering of the lives on the page counted. */
  readonly answered: number;
  /** The longest that the page was held up meanwhile, from the first look at a mould on. */
  readonly blocked: number;
}

/** Curves, fits and beliefs of every rubber, and the forecast of every mould for thirty more shots: first as a screen does it, on a page that has never done it before. */
export async function timeLife(shelf: Shelf): Promise<LifeTimes> {
  let blocked = 0;
  let last = performance.now();
  const watch = setInterval(() => {
    const now = performance.now();
    blocked = Math.max(blocked, now - last);
    last = now;
  });
  await new Promise((done) => setTimeout(done, 100));
  blocked = 0;
  const asked = performance.now();
  await new Promise<void>((done) => void inTurns(livesInSlices(shelf), done));
  const rubbers = livesByRubber(shelf);
  const names = rubbers.map(({ group }) => group);
  const moulds: ToForecast[] = [];
  await new Promise<void>((done) => void inTurns(toForecast(shelf, names, moulds), done));
  const answer = await sumLife(shelf, names, moulds).answer;
  const answered = performance.now() - asked;
  await new Promise((done) => setTimeout(done, 20));
  clearInterval(watch);
  if (!answer || !('forecasts' in answer) || answer.forecasts.length !== moulds.length) throw new Error('nothing was forecast');

  const began = performance.now();
  const sums = rubbers.map(sumLives);
  forecastAll(
    sums.map(({ posterior }) => posterior),
    moulds,
  );
  return { moulds: moulds.length, sums: performance.now() - began, answered, blocked };
}

/** Slices as the list of moulds to make again is gathered in. */
const SLICE = 100;

function* toForecast(shelf: Shelf, names: readonly string[], moulds: ToForecast[]): Generator<void, void> {
  let looked = 0;
  for (const mould of shelf.things.mould.values()) {
    looked += 1;
    if (looked % SLICE === 0) yield;
    const expected = expectedShotsOf(mould, shelf.studio)?.value;
    if (expected) moulds.push({ sum: names.indexOf(groupOf(mould)), shots: mould.shots, expected, more: 30 });
  }
}
