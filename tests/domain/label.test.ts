import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Code } from '../../src/domain/brand.ts';
import { CROCKFORD } from '../../src/domain/crockford.ts';
import { labelCode, makeCode, mod37Check, nounOfCode, parseCode } from '../../src/domain/label.ts';
import { CODE_LETTER, NOUNS } from '../../src/domain/noun.ts';
import { isProblem } from '../../src/domain/problem.ts';

const six = fc.array(fc.constantFrom(...CROCKFORD), { minLength: 6, maxLength: 6 }).map((characters) => characters.join(''));
const codes = fc
  .tuple(fc.constantFrom(...NOUNS), six)
  .map(([noun, drawn]) => makeCode(noun, drawn))
  .filter((code): code is Code => code !== null);
const sampleCodes = fc.sample(codes, { numRuns: 300, seed: 13 });

function sentence(raw: unknown): string {
  const read = parseCode(raw);
  return isProblem(read) ? `${read.says} ${read.kept}` : `read as ${read}`;
}

describe('making codes', () => {
  it('puts the kind first, six drawn characters, then the check character', () => {
    fc.assert(
      fc.property(fc.constantFrom(...NOUNS), six, (noun, drawn) => {
        const code = makeCode(noun, drawn);
        const check = mod37Check(CODE_LETTER[noun] + drawn);
        if (code === null) return ['*', 'I', 'L', 'O'].includes(check);
        return code === CODE_LETTER[noun] + drawn + check && nounOfCode(code) === noun && parseCode(code) === code;
      }),
    );
  });

  it('draws again where the check character would be * or would be read as a digit', () => {
    const refused = new Set<string>();
    for (const drawn of fc.sample(six, { numRuns: 2000, seed: 5 })) {
      if (makeCode('mould', drawn) === null) refused.add(mod37Check(`M${drawn}`));
    }
    expect([...refused].sort()).toEqual(['*', 'I', 'L', 'O']);
  });

  it('gives every kind its own letter, none of which a typed code reads as a digit', () => {
    const letters = Object.values(CODE_LETTER);
    expect(new Set(letters).size).toBe(NOUNS.length);
    expect(letters.join('')).not.toMatch(/[ILO0-9]/);
  });
});

describe('catching slips', () => {
  it('catches every single wrong character', () => {
    const missed: string[] = [];
    for (const code of sampleCodes) {
      for (let i = 0; i < code.length; i++) {
        for (const wrong of '0123456789ABCDEFGHJKMNPQRSTUVWXYZ*') {
          if (wrong === code[i]) continue;
          if (!isProblem(parseCode(code.slice(0, i) + wrong + code.slice(i + 1)))) missed.push(`${code} ${i} ${wrong}`);
        }
      }
    }
    expect(missed).toEqual([]);
  });

  it('catches every two neighbours swapped, and every two around a third', () => {
    for (const code of sampleCodes) {
      for (const gap of [1, 2]) {
        for (let i = 0; i + gap < code.length; i++) {
          const characters = [...code];
          const [a, b] = [characters[i] as string, characters[i + gap] as string];
          if (a === b) continue;
          characters[i] = b;
          characters[i + gap] = a;
          expect(isProblem(parseCode(characters.join(''))), `${code} ${i} ${gap}`).toBe(true);
        }
      }
    }
  });

  it('says that there is a slip, shows what it read, and that nothing changed', () => {
    const [code] = sampleCodes as [Code];
    const wrong = code.slice(0, 7) + (code[7] === 'X' ? 'Y' : 'X');
    expect(sentence(wrong)).toContain('slip');
    expect(sentence(wrong)).toContain(wrong);
    expect(sentence(wrong)).toContain('Nothing was changed');
  });

  it('says so when the first letter is of no kind', () => {
    expect(sentence('X0000000')).toContain('starts with “X”');
  });
});

describe('reading what was typed or scanned', () => {
  const forms: readonly (readonly [string, (code: string) => string])[] = [
    ['as printed', (code) => code],
    ['lower case', (code) => code.toLowerCase()],
    ['O for 0', (code) => code.replaceAll('0', 'O')],
    ['o for 0', (code) => code.replaceAll('0', 'o')],
    ['I for 1', (code) => code.replaceAll('1', 'I')],
    ['l for 1', (code) => code.replaceAll('1', 'l')],
    ['in two groups', (code) => `${code.slice(0, 4)} ${code.slice(4)}`],
    ['with hyphens', (code) => code.replace(/(.{2})(?=.)/g, '$1-')],
    ['with space around', (code) => `\n  ${code}\t `],
    ['link, code in the hash', (code) => `https://keep.example/#/c/${code}`],
    ['link, capitals for the alphanumeric mode', (code) => `HTTPS://KEEP.EXAMPLE/${code}`],
    ['link to a sub-path and a port', (code) => `http://shelf.example:8080/a/b/?c=${code}`],
    ['link with a slash behind', (code) => `https://keep.example/${code.toLowerCase()}/`],
    ['link with a parameter', (code) => `https://keep.example/?x=1&label=${code}`],
  ];

  it.each(forms)('reads a code %s', (_, form) => {
    for (const code of sampleCodes) expect(parseCode(form(code)), form(code)).toBe(code);
  });

  it('only takes the one stored form from a file', () => {
    const [code] = sampleCodes as [Code];
    expect(labelCode(code)).toBe(code);
    for (const raw of [code.toLowerCase(), ` ${code}`, `https://keep.example/${code}`, 7, null]) {
      expect(isProblem(labelCode(raw))).toBe(true);
    }
  });

  it.each([
    ['nothing', ''],
    ['only space', ' \n'],
    ['no text', undefined],
    ['a number', 12345678],
    ['an object', { toString: () => 'M0000000' }],
    ['one too few', 'M00000'],
    ['one too many', 'M00000000'],
    ['another symbol’s text', 'WIFI:S:workshop;T:WPA;P:secret;;'],
    ['a link that ends elsewhere', 'https://keep.example/about-us'],
    ['a link to a script', 'javascript:alert(1)'],
    ['markup', '<img src=x onerror=alert(1)>'],
    ['a very long text', 'M'.repeat(100_000)],
    ['a long link', `https://${'a/'.repeat(240)}`],
    ['marks of direction', '\u202eM0000000'],
    ['full-width digits', 'M００００００A'],
    ['other alphabets', 'МОООООО8'],
    ['a null character', 'M000\u00000000'],
  ])('refuses %s in a sentence', (_, raw) => {
    const started = performance.now();
    const read = parseCode(raw);
    expect(isProblem(read)).toBe(true);
    if (isProblem(read)) {
      expect(read.says).toMatch(/\.$/);
      expect(read.says.length).toBeLessThan(160);
    }
    expect(performance.now() - started).toBeLessThan(500);
  });

  it('never throws and never reads what does not check', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary', maxLength: 40 }), fc.string({ minLength: 8, maxLength: 8 }), fc.anything()),
        (raw) => {
          const read = parseCode(raw);
          return isProblem(read) || mod37Check(read.slice(0, 7)) === read.charAt(7);
        },
      ),
      { numRuns: 500, seed: 99 },
    );
  });

  it('knows the kind by the letter', () => {
    expect(() => nounOfCode('X0000000' as Code)).toThrow(RangeError);
  });
});
