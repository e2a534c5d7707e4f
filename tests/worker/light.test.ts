import { expect, it } from 'vitest';
import { evened, halved, lightOf, logOf, mean } from '../../src/worker/light.ts';
import { chance } from '../support/chance.ts';

function made(width: number, height: number, at: (x: number, y: number) => number) {
  return { width, height, data: Uint8Array.from({ length: width * height }, (_, i) => at(i % width, Math.floor(i / width))) };
}

it('means the square about a point, the rim’s points going on beyond it', () => {
  const random = chance(1);
  const [width, height, radius] = [7, 5, 2];
  const grey = made(width, height, () => 256 * random());
  const found = mean(lightOf(grey), radius).data;
  const dot = (x: number, y: number) =>
    grey.data[Math.min(height - 1, Math.max(0, y)) * width + Math.min(width - 1, Math.max(0, x))] as number;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let v = -radius; v <= radius; v++) for (let u = -radius; u <= radius; u++) sum += dot(x + u, y + v);
      expect(found[y * width + x], `${x}, ${y}`).toBeCloseTo(sum / 25, 3);
    }
  }
});

it('makes one point of four and leaves an odd rim out', () => {
  const half = halved(lightOf(made(5, 3, (x, y) => 10 * x + y)));
  expect([half.width, half.height, [...half.data]]).toEqual([2, 1, [5.5, 25.5]]);
});

it('takes as much off paper as off ink where the logarithm is taken of a shadow', () => {
  const [paper, ink, shadedPaper, shadedInk] = logOf(made(4, 1, (x) => [239, 29, 119, 14][x] as number)).data as unknown as number[];
  expect((paper as number) - (shadedPaper as number)).toBeCloseTo((ink as number) - (shadedInk as number), 3);
  expect([...logOf(made(2, 1, (x) => 255 * x)).data].map(Math.round)).toEqual([0, 255]);
});

it('takes a slow change of the light away and keeps a line in it, as strong as asked', () => {
  const grey = made(60, 9, (x) => 60 + 2 * x + (x === 30 ? -20 : 0));
  const row = (strength: number) => [...evened(lightOf(grey), 4, strength).data.subarray(4 * 60, 5 * 60)];
  expect(row(2).slice(8, 24)).toEqual(Array(16).fill(128));
  // A line of one point in nine lowers the mean about it by a ninth.
  expect([row(2)[30], row(4)[30]]).toEqual([Math.round(128 - 2 * 20 * (8 / 9)), Math.round(128 - 4 * 20 * (8 / 9))]);
  expect(row(20)[30]).toBe(0);
});
