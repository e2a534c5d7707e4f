import type { ReaderOptions } from 'zxing-wasm/reader';
import type { Grey } from './grey.ts';
import { evened, halved, type Light, lightOf, logOf, mean } from './light.ts';
import { CLEAR_LOOK, EVENED_LOOK, QUICK_LOOK, THOROUGH_LOOK } from './reader-settings.ts';

/** Above this long side, px, four points are made one: it takes grain away as a mean does, and a quarter of the time. */
const HALVED_FROM = 1000;

function smoothed(light: Light): Light {
  return Math.max(light.width, light.height) > HALVED_FROM ? halved(light) : mean(light, 1);
}

/**
 * `radius` is half the side, px, of the square that a point's light is judged by, some three modules of a label held in the frame. The narrow one
 * sharpens what is blurred as well; the wide one, on logarithms, reads the dimmest and across a shadow's edge. All four figures were found
 * on the made label pictures of three seeds.
 */
const NARROW = { radius: 12, strength: 2 };
const WIDE = { radius: 16, strength: 4 };

interface Look {
  readonly of: (picture: Grey) => Grey;
  readonly settings: ReaderOptions;
}

const asItIs = (picture: Grey) => picture;
const QUICK: readonly Look[] = [
  { of: asItIs, settings: CLEAR_LOOK },
  { of: asItIs, settings: QUICK_LOOK },
];
const THOROUGH: readonly Look[] = [
  { of: asItIs, settings: THOROUGH_LOOK },
  { of: (picture) => evened(smoothed(lightOf(picture)), NARROW.radius, NARROW.strength), settings: EVENED_LOOK },
  { of: (picture) => evened(smoothed(logOf(picture)), WIDE.radius, WIDE.strength), settings: EVENED_LOOK },
];

/** A quick look, or a thorough one: each goes on, to dearer ways, only while nothing is found. */
export async function lookAt<T>(
  picture: Grey,
  isThorough: boolean,
  read: (picture: Grey, settings: ReaderOptions) => Promise<readonly T[]>,
): Promise<readonly T[]> {
  for (const { of, settings } of isThorough ? THOROUGH : QUICK) {
    const found = await read(of(picture), settings);
    if (found.length > 0) return found;
  }
  return [];
}
