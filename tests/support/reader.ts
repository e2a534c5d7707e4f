import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, type ReaderOptions, readBarcodes } from 'zxing-wasm/reader';
import { QUICK_LOOK } from '../../src/device/reader-settings.ts';
import { lookAt } from '../../src/device/second-look.ts';
import { type Grey, toImageData } from './label-picture.ts';

let ready: Promise<unknown> | undefined;

/** The app's decoder with its settings, or others to compare them with, outside a browser. */
export async function readImage(image: ImageData, settings: ReaderOptions = QUICK_LOOK): Promise<string[]> {
  ready ??= prepareZXingModule({
    overrides: {
      wasmBinary: readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')).buffer as ArrayBuffer,
    },
    fireImmediately: true,
  });
  await ready;
  return (await readBarcodes(image, settings)).map((symbol) => symbol.text);
}

export function readLabel(picture: Grey): Promise<string[]> {
  return readImage(toImageData(picture));
}

/** As the scanner does while a label stays before the camera: quick looks, and a thorough one when they find nothing. */
export async function readAsScanned(image: ImageData): Promise<readonly string[]> {
  const quick = await lookAt(image, false, readImage);
  return quick.length > 0 ? quick : lookAt(image, true, readImage);
}
