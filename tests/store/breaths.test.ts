import { expect, it } from 'vitest';
import { inBreaths } from '../../src/store/breaths.ts';

function* work(slices: number, ms: number): Generator<void, string> {
  for (let i = 0; i < slices; i++) {
    const end = performance.now() + ms;
    while (performance.now() < end);
    yield;
  }
  return 'done';
}

it('long work in slices lets what waits run in between, and tells of each slice', async () => {
  let ran = 0;
  let told = 0;
  const timer = setInterval(() => {
    ran += 1;
  }, 1);
  const answer = await inBreaths(work(40, 5), () => {
    told += 1;
  });
  clearInterval(timer);
  expect([answer, told]).toEqual(['done', 40]);
  // 200 ms of work in turns of 25: something else came in after each but the last.
  expect(ran).toBeGreaterThanOrEqual(3);
});

it('what goes wrong in a slice goes wrong', async () => {
  function* broken(): Generator<void, never> {
    yield;
    throw new Error('torn');
  }
  await expect(inBreaths(broken())).rejects.toThrow('torn');
});
