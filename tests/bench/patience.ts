import type { Page } from 'playwright-core';

/** What a job did not come to an end by. */
export class Stopped {
  /** Follows a name: “… did not finish in 300 s”. */
  readonly says: string;
  /** How long it was given, or lasted. */
  readonly ms: number;

  constructor(says: string, ms: number) {
    this.says = says;
    this.ms = ms;
  }
}

const CLOSED = /page crashed|Target page, context or browser has been closed|Target crashed/i;

/** Gives a job in a page so long, in ms; a page that crashes under it is told too. Closing the page then ends the job. */
export async function patiently<T>(page: Page, ms: number, job: (page: Page) => Promise<T>): Promise<T | Stopped> {
  const began = performance.now();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<Stopped>((done) => {
    timer = setTimeout(() => done(new Stopped(`did not finish in ${ms / 1000} s`, ms)), ms);
  });
  const crashed = new Promise<Stopped>((done) => {
    page.once('crash', () => {
      const lasted = performance.now() - began;
      done(new Stopped(`crashed its page after ${(lasted / 1000).toFixed(0)} s`, lasted));
    });
  });
  const working = job(page).catch((error: unknown) => {
    if (CLOSED.test(String(error))) return crashed;
    throw error;
  });
  try {
    return await Promise.race([working, late, crashed]);
  } finally {
    clearTimeout(timer);
  }
}
