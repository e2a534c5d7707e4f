import { expect, it } from 'vitest';
import { lookAt } from '../../src/worker/second-look.ts';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';
import { after, dim, grain } from '../support/label-damage.ts';
import { hardPicture } from '../support/label-hardships.ts';
import { drawModules, labelModules, paintLabel, toImageData } from '../support/label-picture.ts';
import { readAsScanned, readAtOneLook, readByDefaults, readImage } from '../support/reader.ts';

it('reads labels that a quick look misses: dim, blotted, smeared, with a lamp in them; and nothing else', async () => {
  let [quick, second] = [0, 0];
  for (const hardship of ['dim', 'lamp in it', 'shadow', 'blotted', 'wax smeared']) {
    const random = chance(2006);
    const codes = drawCodes(4, random);
    for (const [i, code] of codes.entries()) {
      const picture = toImageData(hardPicture(hardship, labelModules(code, '2-H'), (i + 1) / 4, random));
      if ((await readImage(picture)).length > 0) quick += 1;
      const texts = await readAsScanned(picture);
      expect([[], [code]], `${hardship} ${i}`).toContainEqual(texts);
      second += texts.length;
    }
  }
  expect(second).toBeGreaterThan(quick);
});

it('reads a label in a frame of a camera’s size as well as in a small one', async () => {
  const [code = ''] = drawCodes(1, chance(3));
  for (const [width, height] of [
    [1280, 720],
    [321, 243],
  ]) {
    const random = chance(4);
    const view = paintLabel(labelModules(code, '2-H'), {
      width: width as number,
      height: height as number,
      side: (height as number) * 0.6,
      turn: 8,
    });
    expect(await readAsScanned(toImageData(after(view, dim(0.1, 60), grain(3, random))))).toEqual([code]);
  }
});

it.each([
  ['a shadow that leaves a seventh of the light', 'shadow', 0.9],
  ['a twenty-fifth of its contrast', 'dim', 1],
])('reads with a thorough look what a quick one cannot: %s', async (_, hardship, severity) => {
  const [code = ''] = drawCodes(1, chance(6));
  for (const form of ['1-M', '2-H'] as const) {
    const picture = toImageData(hardPicture(hardship, labelModules(code, form), severity, chance(7)));
    expect(await readAtOneLook(picture), form).toEqual([]);
    expect(await readAtOneLook(picture, true), form).toEqual([code]);
  }
});

it('takes no micro symbol for a label: the least of them, with no error correction, can be seen in specks', async () => {
  // Seen, as 409518, in a label of another code with a lamp mirrored in it.
  const micro = `
    #######.#.#
    #.....#.#..
    #.###.#...#
    #.###.#..##
    #.###.#..#.
    #.....#...#
    #######..#.
    ...........
    ##.#.#.##..
    ...........
    ...........`;
  const modules = micro
    .trim()
    .split(/\s+/)
    .map((row) => [...row].map((dot) => dot === '#'));
  expect(await readByDefaults(toImageData(drawModules(modules, 8)))).toEqual(['409518']);
  expect(await readAsScanned(toImageData(drawModules(modules, 8)))).toEqual([]);
});

it('ends a quick look with all that is clear, and only where nothing is clear tries the dearer ways', async () => {
  const picture = { width: 2, height: 2, data: new Uint8Array(4) };
  const asked: unknown[] = [];
  const answers = [['A', 'B'], [], ['C'], [], []];
  const read = async (_: unknown, { maxNumberOfSymbols, tryInvert }: { maxNumberOfSymbols?: number; tryInvert?: boolean }) => {
    asked.push([maxNumberOfSymbols, tryInvert]);
    return answers.shift() ?? [];
  };
  expect(await lookAt(picture, false, read)).toEqual(['A', 'B']);
  expect(await lookAt(picture, false, read)).toEqual(['C']);
  expect(await lookAt(picture, false, read)).toEqual([]);
  expect(asked).toEqual([
    [8, false],
    [8, false],
    [1, true],
    [8, false],
    [1, true],
  ]);
});

it('ends a thorough look with the first way that finds something', async () => {
  const picture = { width: 2, height: 2, data: new Uint8Array(4) };
  for (const ways of [1, 2, 3]) {
    let asked = 0;
    expect(await lookAt(picture, true, async () => (++asked === ways ? ['A'] : []))).toEqual(['A']);
    expect(asked).toBe(ways);
  }
  expect(await lookAt(picture, true, async () => [])).toEqual([]);
});
