import { saveFile } from '../device/files.ts';
import { printPage } from '../device/print.ts';
import type { Day } from '../domain/brand.ts';
import { writeSheet } from '../domain/csv/write.ts';
import { fold } from '../domain/folding.ts';

interface List {
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Hands a list over as CSV for a spreadsheet. False when the person closed the share sheet. */
export function saveList({ title, headings, rows }: List, today: Day): Promise<boolean> {
  const text = writeSheet([headings, ...rows]);
  return saveFile(`${fileName(title)}-${today}.csv`, new Blob([text], { type: 'text/csv;charset=utf-8' }));
}

/** The title in letters and figures that every drive takes. */
function fileName(title: string): string {
  const words = fold(title)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  return `mouldkeep-${words || 'list'}`;
}

/** Prints what the print styles leave on the page. */
export const print = printPage;
