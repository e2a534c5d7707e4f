import type { Code } from './brand.ts';
import { CROCKFORD, normaliseBase32 } from './crockford.ts';
import { CODE_LETTER, NOUNS, type Noun } from './noun.ts';
import { type Problem, problem } from './problem.ts';

/** ISO 7064 MOD 37-2 alphabet: values 0–36. */
const ISO_37 = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*';
export const BODY_LENGTH = 7;

/** ISO 7064 MOD 37-2 check character of an upper-case alphanumeric body; throws RangeError on any other character. */
export function mod37Check(body: string): string {
  let sum = 0;
  for (const character of body) {
    const value = ISO_37.indexOf(character);
    if (value < 0 || value === 36) throw new RangeError(`not in the MOD 37-2 alphabet: ${character}`);
    sum = ((sum + value) * 2) % 37;
  }
  return ISO_37.charAt((38 - sum) % 37);
}

/**
 * The code for a drawn body, or null when it has to be drawn again: bodies whose check character would be `*`, or one of the
 * letters that a typed code reads as a digit (I, L, O), are not used, so that every code survives being read aloud and typed.
 */
export function makeCode(noun: Noun, sixCharacters: string): Code | null {
  const body = CODE_LETTER[noun] + sixCharacters;
  const check = mod37Check(body);
  return CROCKFORD.includes(check) || check === 'U' ? ((body + check) as Code) : null;
}

const LETTERS = Object.values(CODE_LETTER).join('');
const CODE_SHAPE = new RegExp(`^[${LETTERS}][0-9A-HJKMNP-TV-Z]{6}[0-9A-HJKMNP-Z]$`);
const BY_LETTER = new Map(NOUNS.map((noun) => [CODE_LETTER[noun], noun]));

export function nounOfCode(code: Code): Noun {
  const noun = BY_LETTER.get(code.charAt(0));
  if (!noun) throw new RangeError(`no kind of thing has labels like ${code}`);
  return noun;
}

/** What stands in the code part of a link to the studio's own address, e.g. `https://example.org/keep/#/c/M0ABC12X`. */
const LINK = /^[a-z][a-z0-9+.-]*:\/\/\S*[/#?&=]([A-Za-z0-9-]{8,12})\/?$/i;

/**
 * Reads a label: the bare code, or a link that ends in it; typed in any case, with O/0 and I/L/1 forgiven.
 * A Problem says whether it is no label of the studio's at all, or one with a slip in it.
 */
export function parseCode(raw: unknown): Code | Problem {
  if (typeof raw !== 'string' || raw.trim() === '') return problem('There is no code to read.');
  if (raw.length > 500) return problem('That is far longer than a shelf label.', 'Nothing was changed.');
  const trimmed = raw.trim();
  const bare = LINK.exec(trimmed)?.[1] ?? trimmed;
  const code = normaliseBase32(bare);
  if (code.length !== BODY_LENGTH + 1) {
    return problem(`“${bare.slice(0, 40)}” is not a shelf label: a code has ${BODY_LENGTH + 1} characters.`, 'Nothing was changed.');
  }
  if (!CODE_SHAPE.test(code)) {
    return /^[0-9A-Z]+$/.test(code) && !BY_LETTER.has(code.charAt(0))
      ? problem(`No shelf label starts with “${code.charAt(0)}”.`, 'Nothing was changed. Look at the label again and type it once more.')
      : problem(`“${bare.slice(0, 40)}” is not a shelf label.`, 'Nothing was changed.');
  }
  if (mod37Check(code.slice(0, BODY_LENGTH)) !== code.charAt(BODY_LENGTH)) {
    return problem(
      `“${code}” has a slip in it: its check character does not fit.`,
      'Nothing was changed. Look at the label again and type it once more.',
    );
  }
  return code as Code;
}

/** For field tables: a code as stored, already in its one form. */
export function labelCode(raw: unknown): Code | Problem {
  const code = parseCode(raw);
  return code === raw || typeof code !== 'string' ? code : problem(`“${String(raw).slice(0, 20)}” is not written as a code is stored.`);
}
