import { sayLength } from '../../domain/measure-words.ts';
import type { Units } from '../../domain/units.ts';

/** “300 × 100 mm”. */
export function sizeInWords(wide: number, high: number, units: Units): string {
  return `${sayLength(wide, units).replace(/\s\D+$/, '')} × ${sayLength(high, units)}`;
}
