import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type ReaderOptions, readBarcodes } from 'zxing-wasm/reader';
import { type Grey as Greys, greyOf } from '../../src/worker/grey.ts';
import { QUICK_LOOK } from '../../src/worker/reader-settings.ts';
import { lookAt } from '../../src/worker/second-look.ts';
import { loadSymbols, readSymbols } from '../../src/worker/symbols.ts';
import { type Grey, toImageData } from './label-picture.ts';

let ready: Promise<void> | undefined;

function load(): Promise<void> {
  const path = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  ready ??= loadSymbols({ bytes: readFileSync(path).buffer as ArrayBuffer });
  return ready;
}

async function textsIn(picture: Greys, settings: ReaderOptions): Promise<string[]> {
  await load();
  return (await readSymbols(picture, settings)).map((symbol) => symbol.text);
}

/** The app's decoder with its settings, outside a browser. */
export function readImage(image: ImageData, settings: ReaderOptions = QUICK_LOOK): Promise<string[]> {
  return textsIn(greyOf(image), settings);
}

/** The same decoder as those use it who leave its settings alone. */
export async function readByDefaults(image: ImageData): Promise<string[]> {
  await load();
  return (await readBarcodes(image, { formats: ['QRCode'] })).map((symbol) => symbol.text);
}

export function readLabel(picture: Grey): Promise<string[]> {
  return readImage(toImageData(picture));
}

/** One look, as the app takes it. */
export function readAtOneLook(image: ImageData, isThorough = false): Promise<readonly string[]> {
  return lookAt(greyOf(image), isThorough, textsIn);
}

/** As the scanner does while a label stays before the camera: quick looks, and a thorough one when they find nothing. */
export async function readAsScanned(image: ImageData): Promise<readonly string[]> {
  const quick = await readAtOneLook(image);
  return quick.length > 0 ? quick : readAtOneLook(image, true);
}
