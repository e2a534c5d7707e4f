import { expect, it } from 'vitest';
import { chanceOfMore, shotsLeft } from '../../../src/domain/survival/forecast.ts';
import { forecastAll, sumLives, type ToForecast } from '../../../src/domain/survival/life-sums.ts';
import { livesByRubber } from '../../../src/domain/survival/rubber-lives.ts';
import { aMould, aShelf, day } from '../../support/builders.ts';

const lives = {
  lives: [37, 52, 90, 41, 130, 77].map((shots, i) => ({ shots, isEnd: i % 2 === 0 })),
  expected: [80, 80, 80, 80, 160, 80],
};

it('forecasts many moulds as it would each by itself, to a hundredth or a shot', () => {
  const { posterior } = sumLives(lives);
  const moulds = Array.from(
    { length: 120 },
    (_, i): ToForecast => ({ sum: 0, shots: i * 3, expected: i % 3 === 0 ? 80 : 1000, more: 5 + i }),
  );
  const forecasts = forecastAll([posterior], moulds);
  for (const [i, { shots, expected, more }] of moulds.entries()) {
    const alone = shotsLeft(posterior, shots, expected);
    const { left, chance } = forecasts[i] ?? { left: alone, chance: Number.NaN };
    for (const part of ['low', 'middle', 'high'] as const)
      expect(Math.abs(left[part] - alone[part])).toBeLessThanOrEqual(1.5 + alone[part] * 0.015);
    expect(Math.abs(chance - chanceOfMore(posterior, shots, expected, more))).toBeLessThan(1e-3);
  }
});

it('forecasts nothing from nothing', () => {
  expect(forecastAll([], [])).toEqual([]);
  expect(
    forecastAll([sumLives({ lives: [], expected: [] }).posterior], [{ sum: 0, shots: 0, expected: 80, more: 1 }])[0]?.chance,
  ).toBeGreaterThan(0.9);
});

it('keeps each rubber’s lives apart, with a key that changes only with what bears on them', () => {
  const tin = aMould({ rubber: 'tin silicone', shots: 40, grade: 'sound' });
  const natural = aMould({ rubber: 'natural', shots: 900, retired: { on: day('2024-05-06'), reason: 'torn' } });
  const { rubber: _, expectedShots: __, ...unknown } = aMould({ shots: 12 });
  const before = livesByRubber(aShelf([tin, natural, unknown]));
  expect(before.map(({ group, moulds, ends }) => [group, moulds, ends])).toEqual([
    ['natural', 1, 1],
    ['tin silicone', 1, 0],
  ]);
  const noted = livesByRubber(aShelf([{ ...tin, note: 'keep dry' }, natural]));
  expect(noted.map(({ key }) => key)).toEqual(before.map(({ key }) => key));
  const shot = livesByRubber(aShelf([{ ...tin, shots: 41 }, natural]));
  expect(shot.map(({ key }, i) => key === before[i]?.key)).toEqual([true, false]);
});
