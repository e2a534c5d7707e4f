import { startJob } from '../device/worker-client.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import type { LifeSum, LivesToSum, ShotForecast, ToForecast } from '../domain/survival/life-sums.ts';
import { packLives, packMoulds, unpackForecasts } from '../domain/survival/packed.ts';
import { allLives, livesByRubber, type RubberGroup } from '../domain/survival/rubber-lives.ts';

/** All rubbers together. */
export const ALL = 'all';
export type SumName = RubberGroup | typeof ALL;

/** The sums of one rubber, and the lives they are of. */
export interface KnownLife {
  readonly key: string;
  readonly sum: LifeSum;
}
export type StudioLife = ReadonlyMap<SumName, KnownLife>;

/** What was summed last, by rubber. Its key is all that it depends on, so that nothing is summed twice. */
const known = new Map<SumName, KnownLife>();

interface Wanted {
  readonly name: SumName;
  readonly key: string;
  readonly lives: LivesToSum;
}

/** An unknown mould's rubber needs sums too: those of no lives at all, which say what is believed beforehand. */
const NO_LIVES: LivesToSum = { lives: [], expected: [] };

function wantedOf(shelf: Shelf, names: readonly SumName[]): readonly Wanted[] {
  const rubbers = livesByRubber(shelf);
  const byGroup = new Map(rubbers.map((each) => [each.group, each]));
  return names.map((name): Wanted => {
    const lives = name === ALL ? allLives(rubbers) : byGroup.get(name);
    return { name, key: lives?.key ?? '', lives: lives ? { lives: lives.lives, expected: lives.expected } : NO_LIVES };
  });
}

function summed(wanted: readonly Wanted[]): StudioLife | undefined {
  const found = wanted.map(({ name, key }) => [name, known.get(name), key] as const);
  return found.every(([, life, key]) => life?.key === key) ? new Map(found.map(([name, life]) => [name, life as KnownLife])) : undefined;
}

/** The sums of these rubbers as far as they are known already; undefined while one of them has to be made. */
export function knownLife(shelf: Shelf, names: readonly SumName[]): StudioLife | undefined {
  return summed(wantedOf(shelf, names));
}

export interface LifeJob {
  /** The sums and forecasts; undefined when it was called off. */
  readonly answer: Promise<{ readonly life: StudioLife; readonly forecasts: readonly ShotForecast[] } | Problem | undefined>;
  cancel(): void;
}

/** Makes the sums that are not known yet, and the forecasts asked for, beside the app. `sum` of a mould is its place in `names`. */
export function sumLife(shelf: Shelf, names: readonly SumName[], moulds: readonly ToForecast[] = []): LifeJob {
  const wanted = wantedOf(shelf, names);
  const sums = wanted.map(({ name, key, lives }) => {
    const life = known.get(name);
    return life?.key === key ? { posterior: life.sum.posterior } : { lives: packLives(lives) };
  });
  const job = startJob('life', { sums, moulds: packMoulds(moulds) });
  const answer = job.answer.then((given) => {
    if (given === undefined || isProblem(given)) return given;
    const life = new Map<SumName, KnownLife>();
    for (const [i, { name, key }] of wanted.entries()) {
      const sum = given.sums[i] ?? known.get(name)?.sum;
      if (!sum) continue;
      known.set(name, { key, sum });
      life.set(name, { key, sum });
    }
    return { life, forecasts: unpackForecasts(given.forecasts) };
  });
  return { answer, cancel: job.cancel };
}
