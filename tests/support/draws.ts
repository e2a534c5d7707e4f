import { DRAWS, SEED } from './amount.ts';
import { Mutator } from './mutate.ts';

/** Of the processor, which a busy machine gives by bits; far longer than any input here takes. A reader that goes astray takes minutes. */
const HANGS_MS = 10_000;

/** Looks at as many mutated inputs as this run makes. What goes wrong is told with its seed and the input itself. */
export function forDraws<T>(draw: (mutator: Mutator) => T, look: (input: T) => void, draws = DRAWS): void {
  for (let i = 0; i < draws; i++) {
    const input = draw(new Mutator(SEED + i));
    const began = process.cpuUsage();
    try {
      look(input);
      const tookMs = process.cpuUsage(began).user / 1000;
      if (tookMs > HANGS_MS) throw new Error(`It took ${tookMs} ms.`);
    } catch (error) {
      throw told(SEED + i, input, error);
    }
  }
}

/** The same for readers that are waited for. */
export async function forDrawsInTurn<T>(draw: (mutator: Mutator) => T, look: (input: T) => Promise<void>): Promise<void> {
  for (let i = 0; i < DRAWS; i++) {
    const input = draw(new Mutator(SEED + i));
    try {
      await look(input);
    } catch (error) {
      throw told(SEED + i, input, error);
    }
  }
}

function told(seed: number, input: unknown, cause: unknown): Error {
  const shown = JSON.stringify(input) ?? String(input);
  return new Error(`MOULDKEEP_SEED=${seed}: ${shown.slice(0, 2000)}`, { cause });
}
