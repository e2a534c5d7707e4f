import { writeFileSync } from 'node:fs';
import { chance } from './chance.ts';
import { after, blur, dim, grain, smear } from './label-damage.ts';
import { type Grey, labelModules, paintLabel } from './label-picture.ts';

const FRAMES = 4;

/** What the camera sees of a label in a dim workshop: a little turned and from the side, smeared with wax, grainy. 640 × 480. */
export function workshopView(code: string, random: () => number): Grey {
  return after(
    paintLabel(labelModules(code, '2-H'), { side: 300, turn: 12, tilt: 15 }),
    smear(320, 235, 6, 0.3, 0.8),
    blur(1),
    dim(0.4, 80),
    grain(4, random),
  );
}

/** Two labels lying side by side, the first on the left; 640 × 480. */
export function twoLabelsView(left: string, right: string, random: () => number): Grey {
  const [width, height] = [640, 480];
  const half = (code: string, turn: number) =>
    paintLabel(labelModules(code, '2-H'), { width: width / 2, height, side: 190, turn, tilt: 10 });
  const [one, other] = [half(left, 8), half(right, -15)];
  const data = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    data.set(one.data.subarray((y * width) / 2, ((y + 1) * width) / 2), y * width);
    data.set(other.data.subarray((y * width) / 2, ((y + 1) * width) / 2), y * width + width / 2);
  }
  return after({ width, height, data }, blur(1), grain(3, random));
}

/** A YUV4MPEG2 film of 4:2:0 frames with grey only, for Chromium's fake camera (`--use-file-for-fake-video-capture`). */
function filmOf(frames: readonly Grey[]): Uint8Array {
  const [first] = frames;
  if (!first) throw new RangeError('a film needs a frame');
  const { width, height } = first;
  const parts: Buffer[] = [Buffer.from(`YUV4MPEG2 W${width} H${height} F15:1 Ip A1:1 C420jpeg\n`)];
  for (const { data } of frames) {
    parts.push(Buffer.from('FRAME\n'), Buffer.from(Uint8ClampedArray.from(data)), Buffer.alloc((width * height) / 2, 128));
  }
  return Buffer.concat(parts);
}

/** Writes the film of two labels in one view to a `.y4m` file. */
export function writeTwoLabelVideo(path: string, left: string, right: string): void {
  const random = chance(641);
  writeFileSync(path, filmOf(Array.from({ length: FRAMES }, () => twoLabelsView(left, right, random))));
}

/** Writes the film of one label to a `.y4m` file. */
export function writeLabelVideo(path: string, code: string): void {
  const random = chance(640);
  writeFileSync(path, filmOf(Array.from({ length: FRAMES }, () => workshopView(code, random))));
}
