import jsqr from 'jsqr';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';
import { HARDSHIPS, hardPicture } from '../support/label-hardships.ts';
import { type LabelForm, labelModules, toImageData } from '../support/label-picture.ts';
import { readAsScanned, readAtOneLook, readByDefaults } from '../support/reader.ts';

export interface DecodeRow {
  /** Which set of pictures. */
  readonly seed: number;
  readonly category: string;
  readonly label: LabelForm;
  readonly reader: string;
  readonly pictures: number;
  /** Share of the pictures whose code was read. */
  readonly read: number;
  /** Pictures from which some other text was read, alone or beside the right one; has to be 0. */
  readonly wrong: number;
  readonly medianMs: number;
}

/** The app's quick look, the app as it scans, and what others make of the very same pictures. */
export const OURS = 'as scanned';
const READERS: Readonly<Record<string, (image: ImageData) => Promise<readonly string[]>>> = {
  quick: (image) => readAtOneLook(image),
  [OURS]: readAsScanned,
  'zxing-wasm’s defaults': readByDefaults,
  // Its option is kept in a default that all later calls share, so that it has to be given every time.
  jsqr: async ({ data, width, height }) => {
    const found = jsqr(data, width, height, { inversionAttempts: 'attemptBoth' });
    return found?.data ? [found.data] : [];
  },
};

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Two sets of pictures, so that nothing is judged by the chances of one. */
const SEEDS = [2006, 4711];

/** How many made label pictures each reader reads, and in what time. Some 2 min for 8 pictures of each kind in each set. */
export async function benchDecode(each = 8): Promise<DecodeRow[]> {
  const rows: DecodeRow[] = [];
  for (const seed of SEEDS) rows.push(...(await benchSet(seed, each)));
  return rows;
}

async function benchSet(seed: number, each: number): Promise<DecodeRow[]> {
  const rows: DecodeRow[] = [];
  for (const category of HARDSHIPS) {
    for (const label of ['1-M', '2-H'] as const) {
      const random = chance(seed);
      const codes = drawCodes(each, random);
      const pictures = codes.map((code, i) =>
        toImageData(hardPicture(category, labelModules(code, label), each > 1 ? i / (each - 1) : 0, random)),
      );
      for (const [reader, read] of Object.entries(READERS)) {
        const times: number[] = [];
        let [right, wrong] = [0, 0];
        for (const [i, picture] of pictures.entries()) {
          const started = performance.now();
          const texts = await read(picture);
          times.push(performance.now() - started);
          if (texts.includes(codes[i] as string)) right += 1;
          if (texts.some((text) => text !== codes[i])) wrong += 1;
        }
        rows.push({
          seed,
          category,
          label,
          reader,
          pictures: each,
          read: right / each,
          wrong,
          medianMs: Math.round(median(times) * 10) / 10,
        });
      }
    }
  }
  return rows;
}
