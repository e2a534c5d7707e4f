import { makeTurns } from './turns.ts';

const inThisTab = makeTurns();

/**
 * Runs a job while no other tab, nor this one, runs another: taking a backup's pictures in, which nothing names until its journal follows, and
 * throwing away what nothing names. A tab that is closed midway frees the way. Without Web Locks only this tab's own jobs wait.
 */
export function alone<T>(studio: string, job: () => Promise<T>): Promise<T> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  return locks ? (locks.request(`mouldkeep-pictures:${studio}`, job) as Promise<T>) : inThisTab(job);
}
