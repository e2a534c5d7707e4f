import { readFileSync } from 'node:fs';
import type { Day } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Thing } from '../../src/domain/shelf.ts';

export const LAST_DAY = '2026-11-20' as Day;

export const journalText = readFileSync(new URL('../../demo-data/tern-quay.jsonl', import.meta.url), 'utf8');
export const picturesText = readFileSync(new URL('../../demo-data/pictures.json', import.meta.url), 'utf8');
export const pictures = JSON.parse(picturesText) as Readonly<Record<string, string>>;

const [first, ...lines] = journalText.trimEnd().split('\n');
export const header: unknown = JSON.parse(first as string);

function readLine(line: string): Entry {
  const entry = parseEntry(JSON.parse(line));
  if (isProblem(entry)) throw new Error(entry.says);
  return entry;
}

export const entries = lines.map(readLine);
export const shelf = foldAll(entries);
export const things: readonly Thing[] = Object.values(shelf.things).flatMap((each) => [...(each as ReadonlyMap<string, Thing>).values()]);
