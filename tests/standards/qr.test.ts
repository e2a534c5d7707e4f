import qrcode from 'qrcode-generator';
import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import type { Code } from '../../src/domain/brand.ts';
import { parseCode } from '../../src/domain/label.ts';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';
import { after, blur, dim, grain, smear } from '../support/label-damage.ts';
import { drawModules, labelModules, type Modules, paintLabel } from '../support/label-picture.ts';
import { readLabel } from '../support/reader.ts';

const FORMS = [
  { version: 1, level: 'M' },
  { version: 2, level: 'H' },
] as const;

/** The two encoders of the registry that share no code: uqr (after Nayuki) and qrcode-generator (Kazuhiko Arase). */
const ENCODERS: Record<string, (text: string, version: 1 | 2, level: 'M' | 'H') => Modules> = {
  uqr: (text, version, level) => encode(text, { ecc: level, minVersion: version, maxVersion: version, border: 0, boostEcc: false }).data,
  'qrcode-generator': (text, version, level) => {
    const symbol = qrcode(version, level);
    symbol.addData(text, 'Alphanumeric');
    symbol.make();
    const size = symbol.getModuleCount();
    return Array.from({ length: size }, (_, v) => Array.from({ length: size }, (_, u) => symbol.isDark(v, u)));
  },
};

/** Painting pictures takes its time on a busy machine. */
const SLOW_MS = 60_000;

describe.each(Object.keys(ENCODERS))('symbols of %s', (name) => {
  const make = ENCODERS[name] as (typeof ENCODERS)[string];

  it.each(FORMS)(
    'are all read, version $version, level $level',
    async ({ version, level }) => {
      for (const code of drawCodes(100, chance(18004 + version))) {
        const modules = make(code, version, level);
        expect(modules.length).toBe(17 + 4 * version);
        for (const px of [2, 4]) expect(await readLabel(drawModules(modules, px)), `${code} ${px}`).toEqual([code]);
      }
    },
    SLOW_MS,
  );
});

describe('what a symbol holds', () => {
  // ISO/IEC 18004:2006, Annex I.2: "01234567" as a version 1-M symbol; found in several public test suites.
  it('reads the standard’s own example', async () => {
    const symbol = qrcode(1, 'M');
    symbol.addData('01234567', 'Numeric');
    symbol.make();
    const modules = Array.from({ length: 21 }, (_, v) => Array.from({ length: 21 }, (_, u) => symbol.isDark(v, u)));
    expect(await readLabel(drawModules(modules, 4))).toEqual(['01234567']);
    const uqr = encode('01234567', { ecc: 'M', minVersion: 1, maxVersion: 1, border: 0, boostEcc: false }).data;
    expect(await readLabel(drawModules(uqr, 4))).toEqual(['01234567']);
  });

  it('reads a link label and finds its code', async () => {
    const [code] = drawCodes(1, chance(3)) as [Code];
    for (const link of [`HTTPS://KEEP.EXAMPLE/${code}`, `https://keep.example/shelf/#/c/${code}`]) {
      const [text] = await readLabel(drawModules(encode(link, { ecc: 'M', border: 0 }).data, 4));
      expect(text).toBe(link);
      expect(parseCode(text)).toBe(code);
    }
  });

  it('reads nothing where there is nothing', async () => {
    const plain = Array.from({ length: 21 }, () => Array.from({ length: 21 }, () => false));
    expect(await readLabel(drawModules(plain, 4))).toEqual([]);
  });
});

describe('labels in the workshop', () => {
  it(
    'reads labels turned, seen from the side, dim, grainy, a little unsharp and smeared with wax',
    async () => {
      const random = chance(21);
      for (const code of drawCodes(12, random)) {
        const picture = after(
          paintLabel(labelModules(code, '2-H'), { side: 280, turn: random() * 360, tilt: random() * 30 }),
          smear(300 + 40 * random(), 220 + 40 * random(), 6, random() - 0.5, 0.8),
          blur(1),
          dim(0.35, 70),
          grain(6, random),
        );
        expect(await readLabel(picture), code).toEqual([code]);
      }
    },
    SLOW_MS,
  );

  it('reads white on black', async () => {
    const [code] = drawCodes(1, chance(8)) as [Code];
    expect(await readLabel(paintLabel(labelModules(code, '1-M'), { side: 260, inverted: true }))).toEqual([code]);
  });
});
