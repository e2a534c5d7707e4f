import type { ReaderOptions } from 'zxing-wasm/reader';

/**
 * Measured on 2,800 made label pictures (`npm run bench` repeats it in small): for QR symbols `tryHarder` and `tryRotate` find nothing
 * more, inverted symbols need `tryInvert`, and halving frames from 200 px on finds the most grainy ones. `QRCode` would take in the micro
 * forms, of which the least has no error correction: specks of a spoiled picture were read as such.
 */
export const QUICK_LOOK = {
  formats: ['QRCodeModel2' as const],
  maxNumberOfSymbols: 1,
  tryHarder: false,
  tryRotate: false,
  tryInvert: true,
  tryDownscale: true,
  downscaleThreshold: 200,
  downscaleFactor: 2,
} satisfies ReaderOptions;

/**
 * Denoising finds some more of the dim and smeared ones, for up to twice the time, and thirds some that halves miss; several symbols, since the
 * first may be a stranger's. `tryHarder` looks at every third row instead of one row in 3/388 of the height: in a picture of 12 megapixels
 * small labels lie between those.
 */
export const THOROUGH_LOOK = {
  ...QUICK_LOOK,
  maxNumberOfSymbols: 8,
  tryHarder: true,
  tryDenoise: true,
  downscaleThreshold: 500,
  downscaleFactor: 3,
} satisfies ReaderOptions;

/**
 * The first look at a frame: one pass over the picture as it is, for all the symbols that are clear, since the first may have neighbours to be
 * told apart from. A label held well is answered by this pass alone.
 */
export const CLEAR_LOOK = { ...QUICK_LOOK, maxNumberOfSymbols: 8, tryInvert: false, tryDownscale: false } satisfies ReaderOptions;

/** For a picture whose light has been made even. */
export const EVENED_LOOK = { ...QUICK_LOOK, maxNumberOfSymbols: 8 } satisfies ReaderOptions;
