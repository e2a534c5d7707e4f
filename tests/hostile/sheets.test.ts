import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { parseCode } from '../../src/domain/label.ts';
import { layFace, type Measure } from '../../src/domain/label-face.ts';
import { SHEET_PRESETS } from '../../src/domain/label-presets.ts';
import { linkStart, payloadOf, QUIET, symbolFor } from '../../src/domain/label-qr.ts';
import { correctionFor, GRID_FIELDS, layOut, parseGrid, positionsOf, testBarOf } from '../../src/domain/label-sheet.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { chosenSheet, readLabelSettings } from '../../src/ui/label-settings.ts';
import { LONG_MS } from '../support/amount.ts';
import { codeOf } from '../support/builders.ts';
import { forDraws } from '../support/draws.ts';
import { keptAs, NAUGHTY } from '../support/naughty.ts';

const TYPED = ['210', '297', '38,1', '65', '2.5', '0', '13', '5', '1', '63.5'];
const presets = SHEET_PRESETS.map(({ grid }) => grid);

test(
  'a sheet typed in any way is one whose labels lie on its page and beside each other, or is told measure by measure why not',
  () => {
    let taken = 0;
    forDraws(
      (mutator) => {
        const typed: Record<string, string> = Object.fromEntries(
          Object.entries(mutator.one(presets)).map(([field, value]) => [field, String(value)]),
        );
        for (let times = mutator.below(4); times > 0; times--)
          typed[mutator.one(GRID_FIELDS).field] = mutator.below(2) > 0 ? mutator.one(TYPED) : mutator.text(TYPED);
        const used = Array.from({ length: mutator.below(9) }, () => mutator.one([-1, 0, 1, 2, 7, 30, 0.5, Number.NaN, 1e9]));
        return { typed, used, labels: mutator.below(400) };
      },
      ({ typed, used, labels }) => {
        const grid = parseGrid(typed);
        if (isProblem(grid)) return expect(Object.values(grid.fields).every((says) => /\S.*[.?]$/.test(says))).toBe(true);
        taken += 1;
        const positions = positionsOf(grid);
        expect(positions.filter(({ x, y }) => x + grid.wide > grid.pageWide + 0.051 || y + grid.tall > grid.pageTall + 0.051)).toEqual([]);
        const pages = layOut(grid, labels, used);
        expect(pages.every((page) => page.length === positions.length)).toBe(true);
        // Each label once, in order, and none where the sheet's label is gone.
        expect(pages.flat().filter((label) => label !== undefined)).toEqual(Array.from({ length: labels }, (_, i) => i));
      },
    );
    expect(taken).toBeGreaterThan(100);
  },
  LONG_MS,
);

test(
  'a bar measured in any way corrects a sheet by a tenth at most, or is told why not; and what a device kept of its sheet is read, whatever it is',
  () => {
    forDraws(
      (mutator) => ({
        measured: mutator.text(['100', '98,5', '103', '0']),
        kept: mutator.value([{ sheet: 'own', own: { wide: '40', tall: 20 }, isCut: true, measured: '99' }]),
        grid: mutator.one(presets),
      }),
      ({ measured, kept, grid }) => {
        const correction = correctionFor(measured, testBarOf(grid));
        if (isProblem(correction)) expect(correction.says).not.toBe('');
        else expect(Math.abs(1 / correction - 1)).toBeLessThanOrEqual(0.1001);
        const chosen = chosenSheet(readLabelSettings({ settings: { get: <T>() => kept as T, set: () => undefined } }));
        expect(isProblem(chosen.grid) ? chosen.grid.says : chosen.grid.columns).toBeTruthy();
      },
    );
  },
  LONG_MS,
);

test('a measure kept as something that no text can be made of is as if it were not kept', () => {
  const kept = {
    sheet: 'own',
    own: { columns: { toString: 1 }, rows: Object.create(null), left: [Symbol.iterator] },
    measured: { toString: 1 },
  };
  const read = readLabelSettings({ settings: { get: <T>() => kept as T, set: () => undefined } });
  expect(read).toEqual(readLabelSettings({ settings: { get: <T>() => ({ sheet: 'own' }) as T, set: () => undefined } }));
});

/** Wide letters, so that words have to be cut; two halves of one character count as two. */
const measure: Measure = (text, font) => text.length * (font === 'bold' ? 0.75 : 0.62);
/** Half of a character that takes two places. */
const isBroken = (text: string) => /\p{Surrogate}/u.test(text);

const SIZES = [
  [25, 15],
  [15, 25],
  [63.5, 38.1],
] as const;

test.each(SIZES)(
  'a label of %s × %s mm, of a thing or a front, keeps whatever is written on it inside its edges and off its symbol',
  (wide, tall) => {
    const wrong: string[] = [];
    for (const [at, text] of NAUGHTY.entries()) {
      const name = keptAs(text) ?? '';
      const other = keptAs(NAUGHTY[(at * 7) % NAUGHTY.length] ?? '') ?? '';
      const face = layFace(
        { code: codeOf('mould', at), name, lines: [other, name], kind: 'mould', isFront: at % 2 > 0 },
        wide,
        tall,
        measure,
      );
      const { symbol } = face;
      const room = { right: wide + 0.01, low: tall + 0.01 };
      for (const { text: words, font, x, y, size } of face.texts) {
        const right = x + measure(words, font) * size;
        const isOnSymbol =
          x < symbol.x + symbol.side - 0.01 && y - 0.8 * size < symbol.y + symbol.side - 0.01 && y > symbol.y && right > symbol.x;
        if (x < -0.01 || right > room.right || y > room.low || y < 0 || isOnSymbol || !(size > 0))
          wrong.push(`${words} at ${x}, ${y}, ${size}`);
        // Half a character is drawn as a box or as nothing.
        if (isBroken(words) && !isBroken(name) && !isBroken(other)) wrong.push(`${JSON.stringify(words)} was cut within a character`);
      }
    }
    expect(wrong).toEqual([]);
  },
  LONG_MS,
);

/** The modules as a picture, eight pixels to a module, with its quiet zone. */
function pictureOf(modules: readonly (readonly boolean[])[]): { data: Uint8ClampedArray; side: number } {
  const scale = 8;
  const side = (modules.length + 2 * QUIET) * scale;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const isDark = modules[Math.floor(y / scale) - QUIET]?.[Math.floor(x / scale) - QUIET];
      if (isDark) data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { data, side };
}

test('a studio’s address of anything makes a link that leads back to the code, and is read as it was written; or the label has the bare code', () => {
  const code = codeOf('mould', 5);
  let links = 0;
  for (const text of [...NAUGHTY, 'quay.example', 'http://127.0.0.1:8080/keep/', 'https://bücher.example/läger']) {
    const address = keptAs(text) ?? '';
    const start = linkStart(address);
    const payload = payloadOf(code, { labelAddress: address, usesLinks: true });
    if (isProblem(start)) {
      expect(payload).toBe(code);
      continue;
    }
    links += 1;
    expect(['http:', 'https:']).toContain(new URL(payload).protocol);
    expect(parseCode(payload)).toBe(code);
    const symbol = symbolFor(payload, 40);
    if (isProblem(symbol)) continue;
    const { data, side } = pictureOf(symbol.modules);
    const read = jsQR(data, side, side)?.data;
    expect(read === undefined ? undefined : parseCode(read)).toBe(code);
  }
  expect(links).toBeGreaterThan(3);
});

test('a symbol holds any text, or says that it is too long', () => {
  for (const text of NAUGHTY.filter((each) => each !== '')) {
    const symbol = symbolFor(text, 30);
    if (isProblem(symbol)) expect(symbol.says).toMatch(/too long/);
    else expect(symbol.modules.length).toBe(17 + 4 * symbol.version);
  }
});
