import { NAME_MAX, text } from '../field.ts';
import { isProblem } from '../problem.ts';
import { segments } from './find-place.ts';
import { readNamed } from './named.ts';
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

/** What is wrong with a name that a row would give another thing; without this look the whole list would be refused for it at the end. */
export function badName(cells: RowCells, target: Target): string | undefined {
  for (const [part, names] of Object.entries(NAMED)) {
    const words = cells.parts[part];
    if (typeof words !== 'string') continue;
    for (const name of readNamed(words)?.flatMap((each) => each.name ?? []) ?? names(words)) {
      const kept = aName(name);
      if (isProblem(kept)) return `${columnsOf(target)[part]?.label}: ${kept.says}`;
    }
  }
  return undefined;
}
