import { DRAWS, SEED } from './amount.ts';
import { Mutator } from './mutate.ts';

/** Far longer than any input here takes, also on a busy machine; a reader that goes astray takes minutes. */
const HANGS_MS = 10_000;

/** Looks at as many mutated inputs as this run makes. What goes wrong is told with its seed and the input itself. */
export function forDraws<T>(draw: (mutator: Mutator) => T, look: (input: T) => void, draws = DRAWS): void {
  for (let i = 0; i < draws; i++) {
    const input = draw(new Mutator(SEED + i));
    const began = performance.now();
    try {
      look(input);
      if (performance.now() - began > HANGS_MS) throw new Error(`It took ${performance.now() - began} ms.`);
    } catch (error) {
      const shown = typeof input === 'string' ? JSON.stringify(input) : (JSON.stringify(input) ?? String(input));
      throw new Error(`MOULDKEEP_SEED=${SEED + i}: ${shown.slice(0, 2000)}`, { cause: error });
    }
  }
}
