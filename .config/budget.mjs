// What a phone must fetch before the shelves can show, and what must come later. Reads the build's own manifest.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { appDir } from './build.mjs';

/** Bytes, gzip, of all code and style the entry imports statically. */
const BUDGET = 110_000;
const ENTRY = 'index.html';
/** Sources (ends of their paths in the manifest) that must be in the build, and must not be part of the first load. @type {readonly string[]} */
const LATER = [
  'demo-data/tern-quay.jsonl',
  'demo-data/pictures.json',
  'zxing-wasm/dist/reader/zxing_reader.wasm',
  'device/own-reader.ts',
  'ui/screens/bring-in.tsx',
  'ui/screens/scan.tsx',
  'ui/screens/settings.tsx',
];

/** @typedef {{ file: string, css?: string[], imports?: string[] }} Chunk */
/** @type {Record<string, Chunk>} */
const manifest = JSON.parse(readFileSync(join(appDir, '.vite/manifest.json'), 'utf8'));

/** @param {string} name @param {Set<string>} [files] @param {Set<string>} [seen] */
function firstLoad(name, files = new Set(), seen = new Set()) {
  const chunk = manifest[name];
  if (!chunk) throw new Error(`The manifest has no ${name}`);
  if (seen.has(name)) return files;
  seen.add(name);
  for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
  for (const imported of chunk.imports ?? []) firstLoad(imported, files, seen);
  return files;
}

/** @type {string[]} */
const faults = [];
const first = firstLoad(ENTRY);
const sizes = [...first].map((file) => ({ file, size: gzipSync(readFileSync(join(appDir, file)), { level: 9 }).length }));
const total = sizes.reduce((sum, { size }) => sum + size, 0);
for (const { file, size } of sizes) console.log(`${String(size).padStart(8)}  ${file}`);
console.log(`${String(total).padStart(8)}  bytes gzip in the first load, of ${BUDGET}`);
if (total > BUDGET) faults.push(`The first load is ${total - BUDGET} bytes over its budget.`);

for (const source of LATER) {
  const name = Object.keys(manifest).find((key) => key.endsWith(source));
  const file = name && manifest[name]?.file;
  if (!file || !existsSync(join(appDir, file)) || statSync(join(appDir, file)).size === 0)
    faults.push(`${source} is missing from the build.`);
  else if (first.has(file)) faults.push(`${source} is part of the first load and should come later.`);
}

for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;
