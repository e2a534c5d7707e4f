import { PERIODS_MAX } from '../design.ts';
import { NAME_MAX, text } from '../field.ts';
import { MASTERS_MAX } from '../mould.ts';
import { PLACE_PERIODS_MAX } from '../place.ts';
import { isProblem } from '../problem.ts';
import { segments } from './find-place.ts';
import { type Named, readNamed } from './named.ts';
import type { RowCells } from './row-cells.ts';
import { columnsOf, type Target } from './targets.ts';

/** The name of a thing, whatever it is. */
export const aName = text(NAME_MAX);
const whole = (words: string) => [words];
const listed = (words: string) => words.split(/[,;/|\n]/).filter((part) => part.trim() !== '');

/** How the cells that name other things are parted into names, unless they are in our own way of writing. */
const NAMED: Readonly<Record<string, (words: string) => readonly string[]>> = {
  design: whole,
  master: whole,
  masters: listed,
  wax: whole,
  period: listed,
  place: segments,
  cabinet: segments,
  in: segments,
};

/** As many of them as an entry may name. */
const mostOf = (part: string, target: Target) =>
  part === 'masters' ? MASTERS_MAX : part === 'period' ? (target === 'place' ? PLACE_PERIODS_MAX : PERIODS_MAX) : undefined;

/** What is wrong with a name that a row would give another thing; without this look the whole list would be refused for it at the end. */
export function badName(cells: RowCells, target: Target): string | undefined {
  for (const [part, names] of Object.entries(NAMED)) {
    const words = cells.parts[part];
    if (typeof words !== 'string') continue;
    const label = columnsOf(target)[part]?.label;
    const named: readonly Named[] = readNamed(words) ?? names(words).map((name) => ({ name }));
    const most = mostOf(part, target);
    if (most !== undefined && named.length > most) return `${label}: ${named.length} are named; ${most} fit here.`;
    for (const { name } of named) {
      const kept = name === undefined ? undefined : aName(name);
      if (isProblem(kept)) return `${label}: ${kept.says}`;
    }
  }
  return undefined;
}
