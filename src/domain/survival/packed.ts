import type { LivesToSum, ShotForecast, ToForecast } from './life-sums.ts';

/** Numbers in a row, which go to the worker and back many times quicker than objects: in fours for moulds and forecasts, in threes for lives. */
export type Packed = Float64Array;

export function packLives({ lives, expected }: LivesToSum): Packed {
  const packed = new Float64Array(lives.length * 3);
  for (const [i, { shots, isEnd }] of lives.entries()) packed.set([shots, isEnd ? 1 : 0, expected[i] as number], i * 3);
  return packed;
}

export function unpackLives(packed: Packed): LivesToSum {
  const count = packed.length / 3;
  const at = (i: number, part: number) => packed[i * 3 + part] as number;
  return {
    lives: Array.from({ length: count }, (_, i) => ({ shots: at(i, 0), isEnd: at(i, 1) === 1 })),
    expected: Array.from({ length: count }, (_, i) => at(i, 2)),
  };
}

export function packMoulds(moulds: readonly ToForecast[]): Packed {
  const packed = new Float64Array(moulds.length * 4);
  for (const [i, { sum, shots, expected, more }] of moulds.entries()) packed.set([sum, shots, expected, more], i * 4);
  return packed;
}

export function unpackMoulds(packed: Packed): readonly ToForecast[] {
  const at = (i: number, part: number) => packed[i * 4 + part] as number;
  return Array.from({ length: packed.length / 4 }, (_, i) => ({ sum: at(i, 0), shots: at(i, 1), expected: at(i, 2), more: at(i, 3) }));
}

export function packForecasts(forecasts: readonly ShotForecast[]): Packed {
  const packed = new Float64Array(forecasts.length * 4);
  for (const [i, { left, chance }] of forecasts.entries()) packed.set([left.low, left.middle, left.high, chance], i * 4);
  return packed;
}

export function unpackForecasts(packed: Packed): readonly ShotForecast[] {
  const at = (i: number, part: number) => packed[i * 4 + part] as number;
  return Array.from({ length: packed.length / 4 }, (_, i) => ({
    left: { low: at(i, 0), middle: at(i, 1), high: at(i, 2) },
    chance: at(i, 3),
  }));
}
