/** Runs jobs one after another, in the order they came. */
export function makeTurns(): <T>(job: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (job) => {
    const mine = last.then(job);
    last = mine.catch(() => undefined);
    return mine;
  };
}
