import { useEffect, useState } from 'preact/hooks';
import { isProblem, type Problem } from '../domain/problem.ts';
import type { ShotForecast, ToForecast } from '../domain/survival/life-sums.ts';
import { areLivesKnown, livesInSlices } from '../domain/survival/rubber-lives.ts';
import { knownLife, type StudioLife, type SumName, sumLife } from '../views/life-known.ts';
import { useShelf } from './studio.tsx';
import { inTurns } from './turns.ts';

export interface LifeState {
  readonly life?: StudioLife;
  /** In the order of the moulds asked for; absent until they are made. */
  readonly forecasts?: readonly ShotForecast[];
  readonly problem?: Problem;
}

const NONE: readonly ToForecast[] = [];

/** Whether the moulds' lives have been gathered, which is done in turns: until then nothing may ask for them that has to answer at once. */
export function useLives(): boolean {
  const shelf = useShelf();
  const { mould } = shelf.things;
  const { studio } = shelf;
  const [, setReady] = useState<object>();
  useEffect(() => (areLivesKnown(shelf) ? undefined : inTurns(livesInSlices(shelf), () => setReady({}))), [mould, studio]);
  return areLivesKnown(shelf);
}

/**
 * The sums of these rubbers, and forecasts of these moulds: at once when they are known, else as soon as the worker has them. Both lists have
 * to stay the same ones; forecasts of another list are never given for it.
 */
export function useLife(names: readonly SumName[], moulds: readonly ToForecast[] = NONE): LifeState {
  const shelf = useShelf();
  const isReady = useLives();
  const [state, setState] = useState<LifeState & { readonly of?: readonly ToForecast[] }>({});
  const { mould } = shelf.things;
  const { studio } = shelf;
  useEffect(() => {
    if (!isReady) return;
    const life = moulds.length === 0 ? knownLife(shelf, names) : undefined;
    if (life) return setState({ life, of: moulds });
    const job = sumLife(shelf, names, moulds);
    void job.answer.then((answer) => {
      if (answer) setState(isProblem(answer) ? { problem: answer } : { ...answer, of: moulds });
    });
    return job.cancel;
    // The shelf itself changes with every entry; only moulds and the studio's figures bear on this.
  }, [mould, studio, names, moulds, isReady]);
  const { of, forecasts, ...rest } = state;
  return of === moulds && forecasts ? { ...rest, forecasts } : rest;
}
