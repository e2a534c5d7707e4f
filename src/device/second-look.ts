import type { ReaderOptions } from 'zxing-wasm/reader';
import { NEIGHBOURS_LOOK, QUICK_LOOK, SECOND_LOOK, THOROUGH_LOOK } from './reader-settings.ts';

/** A picture's light alone, row by row, 0 black to 255 white. */
interface Light {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** ITU-R BT.601 weights. */
function lightOf({ width, height, data }: ImageData): Light {
  const light = new Float32Array(width * height);
  for (let i = 0, k = 0; i < light.length; i++, k += 4)
    light[i] = 0.299 * (data[k] as number) + 0.587 * (data[k + 1] as number) + 0.114 * (data[k + 2] as number);
  return { width, height, data: light };
}

function imageOf({ width, height, data }: Light): ImageData {
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let i = 0, k = 0; i < data.length; i++, k += 4) {
    const value = data[i] as number;
    pixels[k] = value;
    pixels[k + 1] = value;
    pixels[k + 2] = value;
    pixels[k + 3] = 255;
  }
  return { width, height, data: pixels, colorSpace: 'srgb' } as ImageData;
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
function secondLook(image: ImageData): ImageData {
  const light = lightOf(image);
  const smooth = Math.max(image.width, image.height) > HALVED_FROM ? halved(light) : mean(light, 1);
  return imageOf(levelled(smooth, AROUND));
}

/** A quick look, which asks for neighbours only when it found a symbol, or a thorough one that looks a second time when the first finds nothing. */
export async function lookAt<T>(
  image: ImageData,
  isThorough: boolean,
  read: (image: ImageData, settings: ReaderOptions) => Promise<readonly T[]>,
): Promise<readonly T[]> {
  const found = await read(image, isThorough ? THOROUGH_LOOK : QUICK_LOOK);
  if (!isThorough && found.length === 1) {
    const all = await read(image, NEIGHBOURS_LOOK);
    return all.length > 1 ? all : found;
  }
  return found.length > 0 || !isThorough ? found : read(secondLook(image), SECOND_LOOK);
}
