import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import type { Decode } from './decode.ts';
import { QUICK_LOOK, THOROUGH_LOOK } from './reader-settings.ts';

/** The app's own decoder, some 400 kB on the wire; only ever imported when a label is to be read. Rejects when its wasm can't be had. */
export async function openOwnReader(): Promise<Decode> {
  // Without locateFile the module fetches its wasm from another site, which an offline phone and the page's policy both refuse.
  await prepareZXingModule({ overrides: { locateFile: () => wasmUrl }, fireImmediately: true });
  return async (image, isThorough) => {
    const found = await readBarcodes(image, isThorough ? THOROUGH_LOOK : QUICK_LOOK);
    return found
      .filter((symbol) => symbol.isValid)
      .map(({ text, position }) => ({
        text,
        corners: [position.topLeft, position.topRight, position.bottomRight, position.bottomLeft].map(({ x, y }) => ({
          x: x / image.width,
          y: y / image.height,
        })),
      }));
  };
}
