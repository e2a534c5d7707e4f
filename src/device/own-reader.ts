import { prepareZXingModule, type ReaderOptions, readBarcodes } from 'zxing-wasm/reader';
import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import type { Sighting } from '../domain/sighting.ts';
import type { Decode } from './decode.ts';
import { lookAt } from './second-look.ts';

/** The app's own decoder, some 400 kB on the wire; only ever imported when a label is to be read. Rejects when its wasm can't be had. */
export async function openOwnReader(): Promise<Decode> {
  // Without locateFile the module fetches its wasm from another site, which an offline phone and the page's policy both refuse.
  await prepareZXingModule({ overrides: { locateFile: () => wasmUrl }, fireImmediately: true });
  return (image, isThorough) => lookAt(image, isThorough, read);
}

async function read(image: ImageData, settings: ReaderOptions): Promise<readonly Sighting[]> {
  const found = await readBarcodes(image, settings);
  return found
    .filter((symbol) => symbol.isValid)
    .map(({ text, position: { topLeft, topRight, bottomRight, bottomLeft } }) => ({
      text,
      corners: [topLeft, topRight, bottomRight, bottomLeft].map(({ x, y }) => ({ x: x / image.width, y: y / image.height })),
    }));
}
