import type { ReaderOptions } from 'zxing-wasm/reader';
import type { Grey } from './grey.ts';
import { CLEAR_LOOK, QUICK_LOOK, SECOND_LOOK, THOROUGH_LOOK } from './reader-settings.ts';

/** The same as `Grey`, with room for fractions and for what is darker than black. */
interface Light {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

function greyOfLight({ width, height, data }: Light): Grey {
  return { width, height, data: Uint8Array.from(new Uint8ClampedArray(data)) };
}

/** One line's means over `2 radius + 1` points, by a running sum; the ends repeat their last point. */
function meanLine(from: Float32Array, to: Float32Array, start: number, step: number, count: number, radius: number): void {
  const last = start + (count - 1) * step;
  const [first, end] = [from[start] as number, from[last] as number];
  const at = (i: number) => (i < 0 ? first : i >= count ? end : (from[start + i * step] as number));
  let sum = 0;
  for (let i = -radius; i <= radius; i++) sum += at(i);
  for (let i = 0; i < count; i++) {
    to[start + i * step] = sum / (2 * radius + 1);
    sum += at(i + radius + 1) - at(i - radius);
  }
}

/** The mean about every point, in a square of `2 radius + 1`. */
function mean({ width, height, data }: Light, radius: number): Light {
  const [across, both] = [new Float32Array(data.length), new Float32Array(data.length)];
  for (let y = 0; y < height; y++) meanLine(data, across, y * width, 1, width, radius);
  for (let x = 0; x < width; x++) meanLine(across, both, x, width, height, radius);
  return { width, height, data: both };
}

function combine(a: Light, b: Light, by: (a: number, b: number) => number): Light {
  return { width: a.width, height: a.height, data: a.data.map((value, i) => by(value, b.data[i] as number)) };
}

/** Takes the surroundings' light away and stretches what is left: a shadow's edge, dim light and a lamp's mirror image become even. */
function levelled(light: Light, radius: number): Light {
  const rest = combine(light, mean(light, radius), (value, around) => value - around);
  const spread = mean({ ...rest, data: rest.data.map(Math.abs) }, radius);
  return combine(rest, spread, (value, around) => 128 + (60 * value) / (around + 4));
}

/** Above this long side, px, four points are made one: it takes grain away as a mean does, and a quarter of the time. */
const HALVED_FROM = 1000;

function halved({ width, height, data }: Light): Light {
  const [w, h] = [width >> 1, height >> 1];
  const out = new Float32Array(w * h);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const at = 2 * y * width + 2 * x;
      out[y * w + x] =
        ((data[at] as number) + (data[at + 1] as number) + (data[at + width] as number) + (data[at + width + 1] as number)) / 4;
    }
  }
  return { width: w, height: h, data: out };
}

/** Half the side of the square that a point's light is judged by, px; some three modules of a label held in the frame. */
const AROUND = 16;

/**
 * The picture for a second look: grain smoothed, and each point held against the light around it, to be read at one fixed threshold.
 * Measured on the made label pictures: this one finds most of what the quick look leaves.
 */
function secondLook({ width, height, data }: Grey): Grey {
  const light: Light = { width, height, data: Float32Array.from(data) };
  const smooth = Math.max(width, height) > HALVED_FROM ? halved(light) : mean(light, 1);
  return greyOfLight(levelled(smooth, AROUND));
}

/** A quick look, which ends with what is clear when anything is, or a thorough one that looks a second time when the first finds nothing. */
export async function lookAt<T>(
  picture: Grey,
  isThorough: boolean,
  read: (picture: Grey, settings: ReaderOptions) => Promise<readonly T[]>,
): Promise<readonly T[]> {
  const found = await read(picture, isThorough ? THOROUGH_LOOK : CLEAR_LOOK);
  if (found.length > 0) return found;
  return isThorough ? read(secondLook(picture), SECOND_LOOK) : read(picture, QUICK_LOOK);
}
