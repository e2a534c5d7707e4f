import { expect, it } from 'vitest';
import { lookAt } from '../../src/worker/second-look.ts';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';
import { after, dim, grain } from '../support/label-damage.ts';
import { hardPicture } from '../support/label-hardships.ts';
import { labelModules, paintLabel, toImageData } from '../support/label-picture.ts';
import { readAsScanned, readImage } from '../support/reader.ts';

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
