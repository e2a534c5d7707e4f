/** Milliseconds of work before taps get their turn. */
const TURN_MS = 8;

/** Runs a long job a few slices at a time; gives how to stop it. It begins `afterMs` from now. */
export function inTurns(slices: Iterator<void, void>, done: () => void = () => undefined, afterMs = 0): () => void {
  let timer = setTimeout(turn, afterMs);
  function turn(): void {
    const end = performance.now() + TURN_MS;
    while (performance.now() < end) {
      if (slices.next().done) return done();
    }
    timer = setTimeout(turn);
  }
  return () => clearTimeout(timer);
}

/** Once what is drawn now is on the glass. A hidden page is never painted, and does not wait. */
export function afterPaint(job: () => void): void {
  if (document.hidden) setTimeout(job);
  else requestAnimationFrame(() => setTimeout(job));
}
