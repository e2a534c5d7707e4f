import type { ReaderOptions } from 'zxing-wasm/reader';
import { QUICK_LOOK, THOROUGH_LOOK } from '../../src/device/reader-settings.ts';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';
import { after, blur, dim, glare, grain, shadow, smear } from '../support/label-damage.ts';
import { type Grey, type LabelForm, labelModules, paintLabel, toImageData } from '../support/label-picture.ts';
import { readImage } from '../support/reader.ts';

export interface DecodeRow {
  readonly category: string;
  readonly label: LabelForm;
  readonly settings: string;
  readonly pictures: number;
  /** Share of the pictures whose code was read. */
  readonly read: number;
  /** Pictures from which some other text was read; has to be 0. */
  readonly wrong: number;
  readonly medianMs: number;
}

/** What the choice is between; `defaults` still only looks for QR symbols. */
const SETTINGS: Readonly<Record<string, ReaderOptions>> = {
  quick: QUICK_LOOK,
  thorough: THOROUGH_LOOK,
  defaults: { formats: ['QRCode'] },
  'no second tries': { ...QUICK_LOOK, tryInvert: false, tryDownscale: false },
};

type Modules = ReturnType<typeof labelModules>;
/** Each makes a picture of the symbol at a severity from 0, mild, to 1, hardly readable by anyone. */
const CATEGORIES: Readonly<Record<string, (modules: Modules, severity: number, random: () => number) => Grey>> = {
  turned: (modules, _, random) => paintLabel(modules, { side: 240, turn: random() * 360 }),
  'from the side': (modules, s, random) => paintLabel(modules, { side: 260, turn: random() * 360, tilt: 15 + 50 * s }),
  unsharp: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: random() * 20 }), blur(1 + Math.round(4 * s))),
  grainy: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: random() * 20 }), grain(20 + 90 * s, random)),
  dim: (modules, s, random) => after(paintLabel(modules, { side: 240, turn: random() * 20 }), dim(0.3 - 0.26 * s, 60), grain(4, random)),
  'lamp in it': (modules, s, random) =>
    after(paintLabel(modules, { side: 240 }), glare(260 + 120 * random(), 180 + 120 * random(), 25 + 75 * s)),
  shadow: (modules, s, random) => after(paintLabel(modules, { side: 240 }), shadow(340 + 120 * random(), 0.5 - 0.4 * s), grain(3, random)),
  'wax smeared': (modules, s, random) =>
    after(paintLabel(modules, { side: 240 }), smear(250 + 140 * random(), 170 + 140 * random(), 4 + 16 * s, 2 * random() - 1, 0.97)),
  'far away': (modules, s, random) => after(paintLabel(modules, { side: 110 - 70 * s, turn: random() * 20 }), grain(4, random)),
  inverted: (modules, _, random) => paintLabel(modules, { side: 240, turn: random() * 360, inverted: true }),
  workshop: (modules, s, random) =>
    after(
      paintLabel(modules, { side: 200, turn: random() * 360, tilt: 30 * random() }),
      smear(260 + 120 * random(), 180 + 120 * random(), 4 + 6 * s, 2 * random() - 1, 0.9),
      blur(1),
      dim(0.5 - 0.3 * s, 70),
      grain(4 + 8 * s, random),
    ),
};

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** How many made label pictures each setting of the decoder reads, and in what time. Some 20 s for 8 pictures of each kind. */
export async function benchDecode(each = 8): Promise<DecodeRow[]> {
  const rows: DecodeRow[] = [];
  for (const [category, make] of Object.entries(CATEGORIES)) {
    for (const label of ['1-M', '2-H'] as const) {
      const random = chance(2006);
      const codes = drawCodes(each, random);
      const pictures = codes.map((code, i) => toImageData(make(labelModules(code, label), each > 1 ? i / (each - 1) : 0, random)));
      for (const [settings, options] of Object.entries(SETTINGS)) {
        const times: number[] = [];
        let [right, wrong] = [0, 0];
        for (const [i, picture] of pictures.entries()) {
          const started = performance.now();
          const texts = await readImage(picture, options);
          times.push(performance.now() - started);
          if (texts.includes(codes[i] as string)) right += 1;
          else if (texts.length > 0) wrong += 1;
        }
        rows.push({ category, label, settings, pictures: each, read: right / each, wrong, medianMs: Math.round(median(times) * 10) / 10 });
      }
    }
  }
  return rows;
}
