import type { Shelf } from '../../src/domain/shelf.ts';
import { forecastAll, sumLives, type ToForecast } from '../../src/domain/survival/life-sums.ts';
import { expectedShotsOf, groupOf, livesByRubber } from '../../src/domain/survival/rubber-lives.ts';
import { sumLife } from '../../src/views/life-known.ts';

/** What reckoning the lives of all moulds costs, ms. */
export interface LifeTimes {
  readonly moulds: number;
  /** The sums themselves, done on the slowed page in place of the worker, which the slowdown does not reach. */
  readonly sums: number;
  /** From asking to the worker's answer. */
  readonly answered: number;
  /** The longest that the page was held up meanwhile. */
  readonly blocked: number;
}

/** Curves, fits and beliefs of every rubber, and the forecast of every mould for thirty more shots. */
export async function timeLife(shelf: Shelf): Promise<LifeTimes> {
  const rubbers = livesByRubber({ ...shelf, things: { ...shelf.things, mould: new Map(shelf.things.mould) } });
  const names = rubbers.map(({ group }) => group);
  const moulds = [...shelf.things.mould.values()].flatMap((mould): ToForecast[] => {
    const expected = expectedShotsOf(mould, shelf.studio)?.value;
    return expected ? [{ sum: names.indexOf(groupOf(mould)), shots: mould.shots, expected, more: 30 }] : [];
  });
  const began = performance.now();
  const sums = rubbers.map(sumLives);
  forecastAll(
    sums.map(({ posterior }) => posterior),
    moulds,
  );
  const alone = performance.now() - began;

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
  const answer = await sumLife(shelf, names, moulds).answer;
  const answered = performance.now() - asked;
  await new Promise((done) => setTimeout(done, 20));
  clearInterval(watch);
  if (!answer || !('forecasts' in answer) || answer.forecasts.length !== moulds.length) throw new Error('nothing was forecast');
  return { moulds: moulds.length, sums: alone, answered, blocked };
}
