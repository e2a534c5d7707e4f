/** Milliseconds of work before taps get their turn. */
const TURN_MS = 8;
/** A tap is answered by way of the store, in several short tasks; turns between them would hold each of them up. */
const ASIDE_MS = 250;

let touched = Number.NEGATIVE_INFINITY;
// Some keyboards on the glass tell of letters only.
for (const kind of ['pointerdown', 'click', 'keydown', 'input'])
  window.addEventListener(
    kind,
    () => {
      touched = performance.now();
    },
    { capture: true, passive: true },
  );

interface Turns {
  /** Begins so many ms from now. */
  readonly afterMs?: number;
  /** What the next letter itself waits for stands aside for nothing. */
  readonly isPressing?: boolean;
}

/** Runs a long job a few slices at a time, standing aside for a moment after each tap and key; gives how to stop it. */
export function inTurns(
  slices: Iterator<void, void>,
  done: () => void = () => undefined,
  { afterMs = 0, isPressing = false }: Turns = {},
): () => void {
  let timer = setTimeout(turn, afterMs);
  function turn(): void {
    const aside = touched + ASIDE_MS - performance.now();
    if (aside > 0 && !isPressing) {
      timer = setTimeout(turn, aside);
      return;
    }
    const end = performance.now() + TURN_MS;
    while (performance.now() < end) {
      if (slices.next().done) return done();
    }
    timer = setTimeout(turn);
  }
  return () => clearTimeout(timer);
}

/** Once nobody has tapped or typed for so many ms. */
export async function untouched(ms: number): Promise<void> {
  for (;;) {
    const aside = touched + ms - performance.now();
    if (aside <= 0) return;
    await new Promise((done) => setTimeout(done, aside));
  }
}

/** Once what is drawn now is on the glass, and so many ms more. A hidden page is never painted, and does not wait. */
export function afterPaint(job: () => void, ms = 0): void {
  if (document.hidden) setTimeout(job);
  else requestAnimationFrame(() => setTimeout(job, ms));
}
