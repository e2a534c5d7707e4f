/** Goes through a job that is written in slices without a break. */
export function through<T>(slices: Generator<void, T>): T {
  for (;;) {
    const { done, value } = slices.next();
    if (done) return value;
  }
}
