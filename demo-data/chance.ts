/** Seeded chance, so that the same seed writes the same studio (mulberry32, public domain). */
export function makeChance(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const perhaps = <T>(list: readonly T[]): T | undefined => list[Math.floor(next() * list.length)];
  return {
    next,
    whole,
    between: (low: number, high: number) => low + next() * (high - low),
    is: (share: number) => next() < share,
    perhaps,
    pick<T>(list: readonly T[]): T {
      if (list.length === 0) throw new RangeError('nothing to pick from');
      return perhaps(list) as T;
    },
    bytes: (count: number) => Uint8Array.from({ length: count }, () => whole(0, 255)),
    shuffled<T>(list: readonly T[]): T[] {
      const out = [...list];
      for (let i = out.length - 1; i > 0; i--) {
        const j = whole(0, i);
        [out[i], out[j]] = [out[j] as T, out[i] as T];
      }
      return out;
    },
    /** How many of `trials` come out when each does with `share`. */
    hits(trials: number, share: number): number {
      let count = 0;
      for (let i = 0; i < trials; i++) if (next() < share) count++;
      return count;
    },
  };
}
