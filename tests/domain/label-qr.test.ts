import { describe, expect, it } from 'vitest';
import type { Code } from '../../src/domain/brand.ts';
import { parseCode } from '../../src/domain/label.ts';
import { linkStart, pathOf, payloadOf, symbolFor } from '../../src/domain/label-qr.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { codeOf } from '../support/builders.ts';
import { drawModules } from '../support/label-picture.ts';
import { readLabel } from '../support/reader.ts';

const code = codeOf('mould', 9);

function made(text: string, side: number) {
  const symbol = symbolFor(text, side);
  if (isProblem(symbol)) throw new Error(symbol.says);
  return symbol;
}

describe('the symbol on a label', () => {
  it.each([
    [30, 2, 30 / 33],
    [16.5, 2, 0.5],
    [16.4, 1, 16.4 / 29],
    [15, 1, 15 / 29],
  ])('for a bare code on %s mm is of version %s', (side, version, moduleMm) => {
    const symbol = made(code, side);
    expect(symbol.version).toBe(version);
    expect(symbol.moduleMm).toBeCloseTo(moduleMm, 9);
    expect(symbol.isFine).toBe(false);
    expect(symbol.modules.length).toBe(17 + 4 * version);
  });

  it('says when modules are finer than half a millimetre', () => {
    expect(made(code, 14.4).isFine).toBe(true);
    expect(made(`https://studio.example/keep/#/c/${code}`, 15).isFine).toBe(true);
  });

  it('for a link is the smallest version that holds it at level M, and is read back', async () => {
    const link = `https://studio.example/#/c/${code}`;
    expect(made(link, 20).version).toBe(3);
    expect(await readLabel(drawModules(made(link, 20).modules, 4))).toEqual([link]);
    expect(isProblem(symbolFor(`https://${'a'.repeat(300)}.example/#/c/${code}`, 30))).toBe(true);
  });

  it('covers each dark module and no light one', () => {
    const { modules } = made(code, 20);
    const covered = modules.map((row) => row.map(() => false));
    for (const [, x, y, w] of pathOf(modules).matchAll(/M(\d+) (\d+)h(\d+)/g)) {
      for (let i = 0; i < Number(w); i++) (covered[Number(y)] as boolean[])[Number(x) + i] = true;
    }
    expect(covered).toEqual(modules);
  });
});

describe('what the symbol says', () => {
  it.each([
    ['https://studio.example', 'https://studio.example/#/c/'],
    ['studio.example/keep', 'https://studio.example/keep/#/c/'],
    [' http://192.168.1.4:4173/ ', 'http://192.168.1.4:4173/#/c/'],
    ['https://studio.example/keep/#/shelves', 'https://studio.example/keep/#/c/'],
    ['https://studio.example/keep/index.html', 'https://studio.example/keep/index.html#/c/'],
  ])('starts a link with %s', (address, start) => {
    expect(linkStart(address)).toBe(start);
    expect(parseCode(payloadOf(code, { labelAddress: address, usesLinks: true }))).toBe(code);
  });

  it.each(['', 'javascript:alert(1)', 'ftp://x', 'https://a b', 'https://x/?q=1'])(
    'has no link for “%s”, and the bare code then',
    (address) => {
      expect(isProblem(linkStart(address))).toBe(true);
      expect(payloadOf(code, { labelAddress: address, usesLinks: true })).toBe(code);
    },
  );

  it('is the bare code until the studio wants links', () => {
    expect(payloadOf('M0000000' as Code, { labelAddress: 'https://studio.example' })).toBe('M0000000');
  });
});
