import { type ListFile, readListFile, saveFile } from '../device/files.ts';
import type { ImportPlan } from '../domain/csv/plan.ts';
import { SAMPLE_NAME, sampleList } from '../domain/csv/sample.ts';
import { writeSheet } from '../domain/csv/write.ts';
import type { Problem } from '../domain/problem.ts';

export type { ListFile };

/** The list in a file that was chosen. */
export function openList(file: File): Promise<ListFile | Problem> {
  return readListFile(file);
}

function saveSheet(name: string, text: string): Promise<boolean> {
  return saveFile(name, new Blob([text], { type: 'text/csv;charset=utf-8' }));
}

export function saveSample(): Promise<boolean> {
  return saveSheet(SAMPLE_NAME, sampleList());
}

/** The rows that cannot be read, with their lines and reasons, under the list's own headings. */
export function saveUnreadable(plan: ImportPlan): Promise<boolean> {
  const rows = plan.rows.filter((row) => row.state === 'unreadable');
  const head = [...plan.headings, 'Line', 'What is wrong'];
  const body = rows.map((row) => [
    ...plan.headings.map((_, i) => row.cells?.[i] ?? ''),
    ...(row.cells ?? []).slice(plan.headings.length),
    String(row.line),
    row.says.join(' '),
  ]);
  return saveSheet('mouldkeep-lines-to-look-at.csv', writeSheet([head, ...body]));
}
