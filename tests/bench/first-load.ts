import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Figure } from './table.ts';

interface Chunk {
  readonly file: string;
  readonly name?: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
}

/** Code and styles that the page, the doors and the app behind them import statically, gzip, as the build's own manifest tells. */
export function firstLoad(appDir: string): Figure {
  const manifest = JSON.parse(readFileSync(join(appDir, '.vite/manifest.json'), 'utf8')) as Record<string, Chunk>;
  const files = new Set<string>();
  const visit = (name: string) => {
    const chunk = manifest[name] ?? Object.values(manifest).find((each) => each.name === name);
    if (!chunk) throw new Error(`${name} is not in the build's manifest`);
    if (files.has(chunk.file)) return;
    for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
    chunk.imports?.forEach(visit);
  };
  for (const entry of ['index.html', 'doors', 'app', 'stage']) visit(entry);
  const bytes = [...files].reduce((sum, file) => sum + gzipSync(readFileSync(join(appDir, file))).length, 0);
  return { name: 'first load of code, gzip', value: bytes / 1000, unit: 'kB', bound: 110, note: `${files.size} files` };
}
