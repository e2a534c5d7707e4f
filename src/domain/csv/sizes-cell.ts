import { fold } from '../folding.ts';
import type { Reading } from './reading.ts';

const EXACT = /\s*"((?:[^"]|"")*)"(?:\s*=\s*([\d.]+)\s*mm)?\s*(?:;|$)/y;
const WITH_MM = /^(.*?)\s*[(=:]?\s*(\d+(?:[.,]\d+)?)\s*mm\s*\)?$/i;

/** Sizes in one cell, “S 18 mm; M 24 mm; L” or “52/54/56”, as labels with the length where one is written. */
export function sizesCell(cell: string): Reading {
  const exact = exactSizes(cell);
  if (exact) return { value: exact };
  const parts = cell
    .split(/[;/|\n]|,(?!\d)|,(?=\s)/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const sizes = new Map<string, { label: string; mm?: number }>();
  for (const part of parts) {
    const [, before = '', mm] = WITH_MM.exec(part) ?? [];
    const length = lengthOf(mm);
    const label = (length && before.trim()) || part;
    if (!sizes.has(fold(label))) sizes.set(fold(label), { label, ...length });
  }
  return { value: [...sizes.values()] };
}

/** The length that digits say, mm; nothing where there are none, or as many as are no length. */
function lengthOf(digits: string | undefined): { readonly mm: number } | undefined {
  const mm = Number(digits?.replace(',', '.'));
  return Number.isFinite(mm) ? { mm } : undefined;
}

/** Labels between quotation marks, as `writeSizes` writes those that could be read in another way: `"a; b" = 24 mm; "c"`. */
function exactSizes(cell: string): readonly { readonly label: string; readonly mm?: number }[] | undefined {
  const sizes: { label: string; mm?: number }[] = [];
  let at = 0;
  while (at < cell.length) {
    EXACT.lastIndex = at;
    const [, label, mm] = EXACT.exec(cell) ?? [];
    const length = lengthOf(mm);
    if (label === undefined || (mm !== undefined && !length)) return undefined;
    sizes.push({ label: label.replace(/""/g, '"'), ...length });
    at = EXACT.lastIndex;
  }
  return sizes.length > 0 ? sizes : undefined;
}
