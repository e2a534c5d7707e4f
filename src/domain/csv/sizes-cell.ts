import { fold } from '../folding.ts';
import type { Reading } from './reading.ts';

const WITH_MM = /^(.*?)\s*[(=:]?\s*(\d+(?:[.,]\d+)?)\s*mm\s*\)?$/i;

/** Sizes in one cell, “S 18 mm; M 24 mm; L” or “52/54/56”, as labels with the length where one is written. */
export function sizesCell(cell: string): Reading {
  const parts = cell
    .split(/[;/|\n]|,(?!\d)|,(?=\s)/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const sizes = new Map<string, { label: string; mm?: number }>();
  for (const part of parts) {
    const [, before = '', mm] = WITH_MM.exec(part) ?? [];
    const label = before.trim() || part;
    if (!sizes.has(fold(label))) sizes.set(fold(label), mm === undefined ? { label } : { label, mm: Number(mm.replace(',', '.')) });
  }
  return { value: [...sizes.values()] };
}
