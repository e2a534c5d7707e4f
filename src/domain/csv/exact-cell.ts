import { isProblem } from '../problem.ts';
import { numberCell } from './number-cell.ts';
import { type ReadCell, type Reading, shownCell } from './reading.ts';
import { sizesCell } from './sizes-cell.ts';

/** Cells that Mouldkeep’s own lists have and a person’s hardly do, each with how it is written. */

/**
 * A figure that every way of reading decimals reads back the very same: no thousands, no exponent, and never just three decimals, which
 * might be thousands.
 */
export function writeNumber(value: number): string {
  const [digits = '0', power = '0'] = Math.abs(value).toExponential().split('e');
  const figures = digits.replace('.', '');
  const point = Number(power) + 1;
  const whole = point <= 0 ? '0' : figures.slice(0, point).padEnd(point, '0');
  const part = point <= 0 ? '0'.repeat(-point) + figures : figures.slice(point);
  const decimals = /^0*$/.test(part) ? '' : part;
  return `${value < 0 ? '-' : ''}${whole}${decimals === '' ? '' : `.${decimals.length === 3 ? `${decimals}0` : decimals}`}`;
}

export interface Size {
  readonly label: string;
  readonly mm?: number;
}

/** “S 18 mm; M 24 mm” where that is read back the same, else each label between quotation marks. */
export function writeSizes(sizes: readonly Size[]): string {
  const plain = sizes.map(({ label, mm }) => (mm === undefined ? label : `${label} ${writeNumber(mm)} mm`)).join('; ');
  const back = sizesCell(plain);
  if (!isProblem(back) && JSON.stringify(back.value) === JSON.stringify(sizes)) return plain;
  return sizes.map(({ label, mm }) => `"${label.replace(/"/g, '""')}"${mm === undefined ? '' : ` = ${writeNumber(mm)} mm`}`).join('; ');
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const BOX = /^x\s*(-?[\d.]+)\s*y\s*(-?[\d.]+)\s*w\s*([\d.]+)\s*h\s*([\d.]+)(?:\s*mm)?$/i;

/** Where a front is on its cabinet’s, mm: “x 20 y 40 w 300 h 120 mm”. */
export function writeBox({ x, y, w, h }: Box): string {
  return `x ${writeNumber(x)} y ${writeNumber(y)} w ${writeNumber(w)} h ${writeNumber(h)} mm`;
}

export const boxCell: ReadCell = (cell): Reading => {
  const [, x, y, w, h] = BOX.exec(cell.trim()) ?? [];
  if (x === undefined) return { doubt: `${shownCell(cell)} is not where a front is.` };
  return { value: { x: Number(x), y: Number(y), w: Number(w), h: Number(h) } };
};

/** A place in an order: any figure, below nothing too. */
export const orderCell: ReadCell = (cell, ways) => numberCell('order')(cell, ways);

export const yesNoCell: ReadCell = (cell): Reading => {
  const word = cell.trim().toLowerCase();
  if (['yes', 'y', 'true', 'x', 'open'].includes(word)) return { value: true };
  if (['no', 'n', 'false'].includes(word)) return { value: false };
  return { doubt: `${shownCell(cell)} is neither yes nor no.` };
};
