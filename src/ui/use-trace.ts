import { useEffect, useMemo, useState } from 'preact/hooks';
import type { DoubtFrom, Trace } from '../domain/lineage/trace.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { journalBlobs, runTrace } from '../views/trace-run.ts';
import { useDeps, useShelf } from './studio.tsx';

export interface TraceSeen {
  /** Of what is asked now; none while the journal is being worked through for it the first time. */
  readonly trace: Trace | undefined;
  readonly problem: Problem | undefined;
  readonly progress: { readonly done: number; readonly total: number };
}

interface Answered {
  readonly from: DoubtFrom;
  readonly answer: Trace | Problem;
}

const BEGUN = { done: 0, total: 1 };

/** What a mould's doubtful waxes became, worked out beside the page and again after every action. Give the very same `from` as long as it asks the same. */
export function useTrace(from: DoubtFrom | undefined): TraceSeen {
  const { keeper } = useDeps();
  const { last } = useShelf();
  // `last` tells of every action, after which the journal is another.
  const journal = useMemo(() => {
    const rows = journalBlobs(keeper);
    rows.catch(() => undefined); // A run that asks for them says so.
    return rows;
  }, [keeper, last]);
  const [answered, setAnswered] = useState<Answered | undefined>();
  const [progress, setProgress] = useState(BEGUN);
  useEffect(() => {
    if (!from) return undefined;
    setProgress(BEGUN);
    const run = runTrace(journal, from, setProgress);
    void run.trace.then((answer) => answer && setAnswered({ from, answer }));
    return run.cancel;
  }, [journal, from]);
  const answer = answered && answered.from === from ? answered.answer : undefined;
  if (answer === undefined) return { trace: undefined, problem: undefined, progress };
  return isProblem(answer) ? { trace: undefined, problem: answer, progress } : { trace: answer, problem: undefined, progress };
}
