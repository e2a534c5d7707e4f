/** Milliseconds of work before the page gets its turn: less than anybody notices, on a phone four times as slow too. */
const BREATH_MS = 8;

/** Lets everything run that waits for the page. A timer would wait longer, and for a second in a tab that is not looked at. */
export function breathe(): Promise<void> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(0);
  });
}

/**
 * Goes through long work that is written in slices without holding the page up, and tells of each slice. Not inside a transaction, which
 * would end meanwhile.
 */
export async function inBreaths<T>(slices: Generator<void, T>, tell: () => void = () => undefined): Promise<T> {
  for (;;) {
    await breathe(); // Before the first too: whoever asks for it has mostly worked already.
    const end = performance.now() + BREATH_MS;
    while (performance.now() < end) {
      const { done, value } = slices.next();
      if (done) return value;
      tell();
    }
  }
}
