import { prepareZXingModule, type ReaderOptions, readBarcodes } from 'zxing-wasm/reader';
import type { Sighting } from '../domain/sighting.ts';
import type { Grey } from './grey.ts';

/** Loads the decoder, some 400 kB on the wire. Rejects when its wasm cannot be had. */
export async function loadSymbols(wasm: { readonly url: string } | { readonly bytes: ArrayBuffer }): Promise<void> {
  // Without either the module fetches its wasm from another site, which an offline phone and the page's policy both refuse.
  const overrides = 'url' in wasm ? { locateFile: () => wasm.url } : { wasmBinary: wasm.bytes };
  await prepareZXingModule({ overrides, fireImmediately: true });
}

/** The symbols in a picture. Needs `loadSymbols`. */
export async function readSymbols(picture: Grey, settings: ReaderOptions): Promise<readonly Sighting[]> {
  const found = await readBarcodes(asPgm(picture), settings);
  return found
    .filter((symbol) => symbol.isValid)
    .map(({ text, position: { topLeft, topRight, bottomRight, bottomLeft } }) => ({
      text,
      corners: [topLeft, topRight, bottomRight, bottomLeft].map(({ x, y }) => ({ x: x / picture.width, y: y / picture.height })),
    }));
}

/**
 * As a file of the netpbm PGM format, which the decoder takes as it is. Pixels it would first sum to grey in JavaScript, which for a
 * frame of 1280 × 720 takes as long as the looking.
 */
function asPgm({ width, height, data }: Grey): Uint8Array {
  const head = new TextEncoder().encode(`P5\n${width} ${height}\n255\n`);
  const file = new Uint8Array(head.length + data.length);
  file.set(head);
  file.set(data, head.length);
  return file;
}
