import { openBackup } from '../../src/worker/open-backup.ts';

/** Does a job of the worker in this thread; for `vi.mock('…/src/device/worker-client.ts', workerHere)`. */
export function workerHere() {
  return {
    startJob: (job: string, asks: Parameters<typeof openBackup>[0], tell: (progress: { done: number; total: number }) => void) => ({
      answer: job === 'backup' ? openBackup(asks, tell) : Promise.reject(new Error(job)),
      cancel: () => undefined,
    }),
  };
}
