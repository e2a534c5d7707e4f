import type { Entry } from '../domain/entry.ts';
import { type Problem, problem } from '../domain/problem.ts';
import {
  JOB_READS,
  type JobName,
  type Jobs,
  type ListHead,
  type OpenedStudio,
  type Progress,
  type Reply,
  type Request,
} from '../worker/protocol.ts';

export type { ListHead, OpenedStudio, Progress };

export interface RunningJob<T> {
  /** The answer; undefined when the job was called off. */
  readonly answer: Promise<T | Problem | undefined>;
  cancel(): void;
}

/** Starts a job in a worker of its own, which ends with it: calling it off costs no more than ending the worker. */
export function startJob<J extends JobName>(
  job: J,
  asks: Jobs[J]['asks'],
  onProgress?: (progress: Progress) => void,
): RunningJob<Jobs[J]['gives']> {
  const worker = new Worker(new URL('../worker/main.ts', import.meta.url), { type: 'module' });
  let settle: (answer: Jobs[J]['gives'] | Problem | undefined) => void = () => undefined;
  const answer = new Promise<Jobs[J]['gives'] | Problem | undefined>((resolve) => {
    settle = (value) => {
      worker.terminate();
      resolve(value);
    };
  });
  const entries: Entry[] = [];
  worker.onmessage = ({ data }: MessageEvent<Reply>) => {
    if ('progress' in data) onProgress?.(data.progress);
    else if ('entries' in data) for (const entry of data.entries) entries.push(entry);
    else settle((entries.length > 0 ? { ...data.answer, entries } : data.answer) as Jobs[J]['gives'] | Problem);
  };
  worker.onerror = () =>
    settle(problem(`The ${JOB_READS[job]} could not be worked through.`, 'Nothing was changed. Close other apps, and try again.'));
  worker.postMessage({ job, asks } as Request);
  return { answer, cancel: () => settle(undefined) };
}
