import { encode, type QrCodeGenerateOptions } from 'uqr';
import type { Code } from './brand.ts';
import { type Problem, problem } from './problem.ts';
import type { StudioFields } from './studio.ts';

/** Modules of white that a symbol needs on every side (ISO/IEC 18004). */
export const QUIET = 4;
/** Least side of a module that a phone reads at arm's length and a home printer prints cleanly, mm. Measured: platform notes of the scanner. */
export const MODULE_MM = 0.5;
/** A symbol of version 10 has 57 modules, 65 with its quiet zone: nothing larger fits a label. */
const VERSION_MAX = 10;

export interface LabelSymbol {
  /** Dark modules, row by row, without the quiet zone. */
  readonly modules: readonly (readonly boolean[])[];
  readonly version: number;
  /** Side of one module, mm. */
  readonly moduleMm: number;
  /** Whether modules are finer than a phone reads easily. */
  readonly isFine: boolean;
}

function symbol(text: string, sideMm: number, options: QrCodeGenerateOptions): LabelSymbol {
  const { data, version, size } = encode(text, { ...options, border: 0 });
  const moduleMm = sideMm / (size + 2 * QUIET);
  return { modules: data, version, moduleMm, isFine: moduleMm < MODULE_MM - 1e-9 };
}

/**
 * The symbol for a label's text on a square of this side, quiet zone included. A bare code is version 2, level H where modules then
 * have 0.5 mm, else version 1; anything longer the smallest version that holds it at level M or better.
 */
export function symbolFor(text: string, sideMm: number): LabelSymbol | Problem {
  if (/^[0-9A-Z]{1,10}$/.test(text)) {
    const strong = symbol(text, sideMm, { ecc: 'H', minVersion: 2, maxVersion: 2 });
    return strong.isFine ? symbol(text, sideMm, { ecc: 'M', minVersion: 1, maxVersion: 1, boostEcc: true }) : strong;
  }
  try {
    return symbol(text, sideMm, { ecc: 'M', maxVersion: VERSION_MAX, boostEcc: true });
  } catch {
    return problem('The studio’s address is too long for a label.', 'Print the bare codes, or shorten the address in Settings.');
  }
}

/** The dark modules as one SVG path in module units, origin at the first module. Rows overlap by a hair, so that no white seam shows between them. */
export function pathOf(modules: LabelSymbol['modules']): string {
  let path = '';
  modules.forEach((row, y) => {
    for (let x = 0; x < row.length; x++) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x++;
      path += `M${from} ${y}h${x + 1 - from}v${modules[y + 1] ? 1.01 : 1}h${from - x - 1}z`;
    }
  });
  return path;
}

/** Why an address cannot stand in a label's link, or the address as it is put before a code. */
export function linkStart(address: string): string | Problem {
  const trimmed = address.trim().replace(/#.*$/, '');
  const full = /^[a-z][a-z0-9+.-]*:\/\//i.test(trimmed) ? trimmed : `https://${trimmed}`;
  // In the form browsers bring it to: a single letter may stand for several words.
  if (
    !/^https?:\/\/(\d{1,3}(\.\d{1,3}){3}|([\p{L}\p{N}][\p{L}\p{M}\p{N}-]*\.)*\p{L}[\p{L}\p{M}\p{N}-]*)(:\d{1,5})?(\/[^\s?#<>"\\^`{|}]*)?$/iu.test(
      full.normalize('NFKC'),
    )
  )
    return problem('The studio’s address is not one that a link can start with.', 'Labels carry the bare code until it is put right.');
  return `${full}${/\/$|\.html?$/i.test(full) ? '' : '/'}#/c/`;
}

/** What a label's symbol says: the bare code, or the link to the studio's own address when it has one and wants it. */
export function payloadOf(code: Code, { labelAddress, usesLinks }: StudioFields): string {
  const start = usesLinks && labelAddress ? linkStart(labelAddress) : undefined;
  return typeof start === 'string' ? start + code : code;
}
