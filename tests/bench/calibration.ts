import { chance } from '../support/chance.ts';
import { type Outcome, percentOf, studioOutcomes, truthFromPrior } from '../support/made-up-studio.ts';
import type { Figure } from './table.ts';

/** Studios whose lives are drawn from the belief itself, and studios of each further truth. */
const STUDIOS = 1500;
const STUDIOS_EACH = 800;
const EXPECTED = [80, 200, 1000, 2000];
const MEDIANS = [0.5, 2];
const SHAPES = [1, 1.5, 2, 3, 4];
const BINS = [
  { from: 0, to: 1 },
  { from: 2, to: 3 },
  { from: 4, to: 7 },
  { from: 8, to: 15 },
  { from: 16, to: 99 },
];
const SEED = 1957;

const PROMISES: readonly { readonly says: string; readonly percent: number; readonly holds: (outcome: Outcome) => boolean }[] = [
  { says: '50 % range', percent: 50, holds: ({ inHalf }) => inHalf },
  { says: '80 % range', percent: 80, holds: ({ inEighty }) => inEighty },
  { says: '90 % promise', percent: 90, holds: ({ keptPromise }) => keptPromise },
];

/** How often the forecasts of made-up studios held, as points away from what they said. */
export function calibration(): Figure[] {
  const next = chance(SEED);
  const own: Outcome[] = [];
  for (let i = 0; i < STUDIOS; i++) own.push(...studioOutcomes(truthFromPrior(next), expectedOf(i), 3 + Math.floor(next() * 23), next));
  const figures = PROMISES.map(({ says, percent, holds }): Figure => {
    const held = percentOf(own, holds);
    const note = `held ${held.toFixed(1)} % of ${own.length} times in ${STUDIOS} studios, lives drawn from the belief itself`;
    return { name: `life forecast: ${says}, off by`, value: Math.abs(held - percent), unit: 'points', bound: 3, note };
  });
  return [...figures, ...otherTruths(next)];
}

const expectedOf = (i: number) => EXPECTED[i % EXPECTED.length] as number;

/** Lives half and twice as long as expected, and shapes from 1 to 4: the worst of them, by the number of ends seen. */
function otherTruths(next: () => number): Figure[] {
  const truths = MEDIANS.flatMap((median) => SHAPES.map((shape) => ({ median, shape })));
  const outcomes = truths.map((truth) => {
    const all: Outcome[] = [];
    for (let i = 0; i < STUDIOS_EACH; i++) all.push(...studioOutcomes(truth, expectedOf(i), 3 + Math.floor(next() * 57), next));
    return { truth, all };
  });
  return BINS.flatMap(({ from, to }) =>
    PROMISES.map(({ says, percent, holds }): Figure => {
      const shares = outcomes.map(({ truth, all }) => {
        const some = all.filter(({ ends }) => ends >= from && ends <= to);
        return { ...truth, count: some.length, held: percentOf(some, holds) };
      });
      const far = shares.reduce((worst, share) => (Math.abs(share.held - percent) > Math.abs(worst.held - percent) ? share : worst));
      const count = shares.reduce((sum, share) => sum + share.count, 0);
      const range = `${Math.min(...shares.map(({ held }) => held)).toFixed(0)} – ${Math.max(...shares.map(({ held }) => held)).toFixed(0)} %`;
      return {
        name: `life forecast, ${from} – ${to} ends, lives half and twice as expected: ${says}, off by`,
        value: Math.abs(far.held - percent),
        unit: 'points',
        ...(from >= 8 ? { bound: 10 } : {}),
        note: `${range} of ${count}; worst with lives × ${far.median}, shape ${far.shape}`,
      };
    }),
  );
}
