import { useEffect, useState } from 'preact/hooks';
import { isProblem, type Problem } from '../domain/problem.ts';
import type { ShotForecast, ToForecast } from '../domain/survival/life-sums.ts';
import { knownLife, type StudioLife, type SumName, sumLife } from '../views/life-known.ts';
import { useShelf } from './studio.tsx';

export interface LifeState {
  readonly life?: StudioLife;
  /** In the order of the moulds asked for; absent until they are made. */
  readonly forecasts?: readonly ShotForecast[];
  readonly problem?: Problem;
}

const NONE: readonly ToForecast[] = [];

/** The sums of these rubbers, and forecasts of these moulds: at once when they are known, else as soon as the worker has them. Both lists have to stay the same ones. */
export function useLife(names: readonly SumName[], moulds: readonly ToForecast[] = NONE): LifeState {
  const shelf = useShelf();
  const [state, setState] = useState<LifeState>({});
  const { mould } = shelf.things;
  const { studio } = shelf;
  useEffect(() => {
    const life = moulds.length === 0 ? knownLife(shelf, names) : undefined;
    if (life) return setState({ life });
    const job = sumLife(shelf, names, moulds);
    void job.answer.then((answer) => {
      if (answer) setState(isProblem(answer) ? { problem: answer } : answer);
    });
    return job.cancel;
    // The shelf itself changes with every entry; only moulds and the studio's figures bear on this.
  }, [mould, studio, names, moulds]);
  return state;
}
