/** Crockford base 32: digits and letters without I, L, O and U. Sorts in ASCII order like the numbers it stands for. */
export const CROCKFORD = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Whole number ≥ 0 as exactly `width` characters; throws RangeError when it does not fit. */
export function toBase32(value: number, width: number): string {
  if (!Number.isSafeInteger(value) || value < 0) throw new RangeError(`not a whole number: ${value}`);
  let rest = value;
  let text = '';
  for (let i = 0; i < width; i++) {
    text = CROCKFORD.charAt(rest % 32) + text;
    rest = Math.floor(rest / 32);
  }
  if (rest > 0) throw new RangeError(`${value} needs more than ${width} characters`);
  return text;
}

/** The number a base-32 text stands for, or NaN when a character is not of the alphabet. */
export function fromBase32(text: string): number {
  let value = 0;
  for (const character of text) {
    const digit = CROCKFORD.indexOf(character);
    if (digit < 0) return Number.NaN;
    value = value * 32 + digit;
  }
  return value;
}

/** Random characters from random bytes (one each, 0–255; 256 is a multiple of 32, so none is favoured). */
export function base32FromBytes(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += CROCKFORD.charAt(byte % 32);
  return text;
}

/** What a person typed, read kindly: any case, O as 0, I and L as 1; spaces and hyphens dropped. */
export function normaliseBase32(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[\s\-–—_.]/g, '')
    .replace(/O/g, '0')
    .replace(/[IL]/g, '1');
}
