// What a phone must fetch before the shelves can show, and what must come later. Reads the build's own manifest.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { appDir } from './build.mjs';

/** Bytes, gzip, of the page's style and of all code that the doors, and the app behind them, import statically. */
const BUDGET = 110_000;
const ENTRIES = ['index.html', 'doors', 'app', 'stage'];
/** Sources (ends of their paths in the manifest) that must be in the build, and must not be part of the first load. @type {readonly string[]} */
const LATER = [
  'demo-data/tern-quay.jsonl',
  'demo-data/pictures.json',
  'zxing-wasm/dist/reader/zxing_reader.wasm',
  'device/own-reader.ts',
  'ui/screens/bring-in.tsx',
  'ui/screens/scan.tsx',
  'ui/screens/settings.tsx',
  'ui/screens/backup.tsx',
  'ui/screens/labels.tsx',
  'ui/screens/pictures.tsx',
  'ui/screens/draw.tsx',
  'ui/screens/life.tsx',
  'ui/screens/lineage.tsx',
  'ui/screens/trace.tsx',
  'ui/screens/size.tsx',
  'ui/screens/remake.tsx',
  'ui/parts/mould-life.tsx',
  'ui/parts/take-sheet.tsx',
  'store/vault.ts',
  'ui/parts/rescued-notice.tsx',
  'ui/parts/second-copy.tsx',
];
/** The same for what need not be a file of its own: parts of modules' paths. @type {readonly string[]} */
const LATER_MODULES = [
  '/node_modules/fflate/',
  '/node_modules/uqr/',
  '/node_modules/@dagrejs/dagre/',
  '/node_modules/papaparse/',
  '/node_modules/zxing-wasm/',
  '/src/device/backup-zip.ts',
  '/src/domain/backup/',
  '/src/domain/drawing/split.ts',
  '/src/ui/parts/drawing-board.tsx',
  '/src/domain/label-face.ts',
  '/src/domain/label-sheet.ts',
  '/src/domain/lineage/layout.ts',
  '/src/domain/survival/weibull-fit.ts',
  '/src/store/second-copy.ts',
  '/src/worker/open-backup.ts',
];

/** @typedef {{ file: string, name?: string, css?: string[], imports?: string[] }} Chunk */
/** @type {Record<string, Chunk>} */
const manifest = JSON.parse(readFileSync(join(appDir, '.vite/manifest.json'), 'utf8'));

/** @param {string} name @param {Set<string>} [files] @param {Set<string>} [seen] */
function firstLoad(name, files = new Set(), seen = new Set()) {
  const chunk = manifest[name] ?? Object.values(manifest).find((each) => each.name === name);
  if (!chunk) throw new Error(`The manifest has no ${name}`);
  if (seen.has(name)) return files;
  seen.add(name);
  for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
  for (const imported of chunk.imports ?? []) firstLoad(imported, files, seen);
  return files;
}

/** @type {string[]} */
const faults = [];
/** @type {Set<string>} */
const first = new Set();
for (const entry of ENTRIES) firstLoad(entry, first);
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

/** @type {Record<string, string[]>} */
const modules = JSON.parse(readFileSync(join(appDir, '.vite/modules.json'), 'utf8'));
for (const part of LATER_MODULES) {
  const files = Object.keys(modules).filter((file) => modules[file]?.some((id) => id.includes(part)));
  if (files.length === 0) faults.push(`${part} is missing from the build.`);
  for (const file of files) if (first.has(file)) faults.push(`${part} is part of the first load and should come later.`);
}

for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;
