import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { findImports, lineOf, withoutComments } from './support/imports.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** From each part of the app: the parts (or single files) and the packages it may import. `main.tsx` may import everything. */
const table: Readonly<Record<string, { readonly parts: readonly string[]; readonly packages: readonly string[] }>> = {
  'src/domain': { parts: ['src/domain'], packages: ['date-fns', 'papaparse', 'fastest-levenshtein', 'uqr', '@dagrejs/dagre'] },
  'src/worker': { parts: ['src/worker', 'src/domain'], packages: ['fflate', 'zxing-wasm'] },
  'src/store': { parts: ['src/store', 'src/domain'], packages: ['dexie'] },
  'src/device': {
    parts: ['src/device', 'src/domain', 'src/worker/protocol.ts', 'sw/messages.ts', 'demo-data'],
    packages: ['zxing-wasm', 'workbox-window', 'idb-keyval', 'fflate'],
  },
  'src/actions': { parts: ['src/actions', 'src/domain', 'src/store', 'src/device'], packages: [] },
  'src/views': { parts: ['src/views', 'src/domain', 'src/store', 'src/device'], packages: [] },
  'src/ui': { parts: ['src/ui', 'src/domain', 'src/actions', 'src/views'], packages: ['preact', '@preact/signals'] },
  'src/opening.ts': { parts: ['src/main.tsx', 'src/ui/stage.tsx', 'src/ui/doors.ts', 'src/ui/turns.ts'], packages: [] },
  sw: { parts: ['sw'], packages: ['workbox-core', 'workbox-precaching', 'workbox-routing'] },
};

const files = ['src', 'sw']
  .flatMap((part) =>
    readdirSync(join(root, part), { recursive: true, encoding: 'utf8' }).map((path) => posix.join(part, path.replaceAll('\\', '/'))),
  )
  .sort();
const sources = files.filter((path) => /\.tsx?$/.test(path)).map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));

function isWithin(path: string, part: string): boolean {
  return path === part || path.startsWith(`${part}/`);
}

function packageOf(specifier: string): string {
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

function importFaults(path: string, text: string): string[] {
  const part = Object.keys(table).find((name) => isWithin(path, name));
  if (path === 'src/main.tsx') return [];
  const may = part ? table[part] : undefined;
  if (!may) return [`${path} belongs to no part of the app`];
  return findImports(text).flatMap(({ specifier, line }) => {
    const isRelative = specifier.startsWith('.');
    const target = isRelative ? posix.join(dirname(path), specifier.replace(/\?.*$/, '')) : packageOf(specifier);
    const allowed = isRelative ? may.parts.some((name) => isWithin(target, name)) : may.packages.includes(target);
    return allowed ? [] : [`${path}:${line} imports ${target}`];
  });
}

/** Files that reach themselves by way of what they import, type-only imports included. */
function circles(all: readonly { readonly path: string; readonly text: string }[]): string[] {
  const imports = new Map(
    all.map(({ path, text }) => [path, findImports(text).map(({ specifier }) => posix.join(dirname(path), specifier))] as const),
  );
  const reached = (from: string, seen = new Set<string>()): ReadonlySet<string> => {
    for (const next of imports.get(from) ?? []) {
      if (seen.has(next)) continue;
      seen.add(next);
      reached(next, seen);
    }
    return seen;
  };
  return [...imports.keys()].filter((path) => reached(path).has(path));
}

/** Every place in comment-free code where something stands that must not. */
function found(path: string, text: string, banned: RegExp): string[] {
  const code = withoutComments(text);
  return [...code.matchAll(banned)].map((match) => `${path}:${lineOf(code, match.index)} ${match[0]}`);
}

describe('what may import what', () => {
  test('every import in src and sw is in the table', () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(sources.flatMap(({ path, text }) => importFaults(path, text))).toEqual([]);
  });

  test.each([
    ['src/domain/a.ts', "import { liveQuery } from 'dexie';", 'src/domain/a.ts:1 imports dexie'],
    ['src/domain/a.ts', "\nimport type { Keeper } from '../store/keeper.ts';", 'src/domain/a.ts:2 imports src/store/keeper.ts'],
    ['src/store/a.ts', "export { x } from '../ui/x.ts';", 'src/store/a.ts:1 imports src/ui/x.ts'],
    ['src/store/a.ts', "export * from '../ui/x.ts';", 'src/store/a.ts:1 imports src/ui/x.ts'],
    ['src/ui/screens/a.tsx', "const s = await import('../../store/keeper.ts');", 'src/ui/screens/a.tsx:1 imports src/store/keeper.ts'],
    ['src/ui/a.tsx', "type K = import('../store/keeper.ts').Keeper;", 'src/ui/a.tsx:1 imports src/store/keeper.ts'],
    ['src/views/a.ts', "import {\n  x,\n} from 'preact/hooks';", 'src/views/a.ts:1 imports preact'],
    ['src/device/a.ts', "import '../worker/jobs.ts';", 'src/device/a.ts:1 imports src/worker/jobs.ts'],
    ['sw/a.ts', "import x from '../src/domain/x.ts';", 'sw/a.ts:1 imports src/domain/x.ts'],
    ['src/domain/a.ts', "const apostrophe = /'/; import { x } from 'preact';", 'src/domain/a.ts:1 imports preact'],
    ['src/odd/a.ts', '', 'src/odd/a.ts belongs to no part of the app'],
  ])('%s may not say: %s', (path, text, fault) => {
    expect(importFaults(path, text)).toEqual([fault]);
  });

  test('no file imports itself by way of others', () => {
    expect(circles(sources)).toEqual([]);
  });

  test('a circle would be found', () => {
    const one = { path: 'src/domain/a.ts', text: "import { b } from './csv/b.ts';" };
    const other = { path: 'src/domain/csv/b.ts', text: "export type { A } from '../a.ts';" };
    expect(circles([one, other])).toEqual([one.path, other.path]);
    expect(circles([one])).toEqual([]);
  });

  test('neither comments nor strings are taken for imports', () => {
    const text =
      "// import { x } from 'dexie';\n/* export * from 'preact' */\nconst s = 'https://x.example'; const t = \"bring it from 'a'\";";
    expect(importFaults('src/domain/a.ts', text)).toEqual([]);
  });
});

describe('the core', () => {
  const banned = /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bcrypto\b|\bperformance\.now\b/g;

  test('takes time, ids and chance as arguments', () => {
    const domain = sources.filter(({ path }) => isWithin(path, 'src/domain'));
    expect(domain.length).toBeGreaterThan(10);
    expect(domain.flatMap(({ path, text }) => found(path, text, banned))).toEqual([]);
  });

  test.each(['Date.now()', 'new Date()', 'Math.random()', 'crypto.randomUUID()'])('would be caught with %s in it', (code) => {
    expect(found('a.ts', `\nconst x = ${code};`, banned)).toHaveLength(1);
  });
});

describe('the shape of the tree', () => {
  test('folders are named for a noun', () => {
    expect(files.filter((path) => path.split('/').some((name) => /^(utils?|helpers?|common|shared|misc)(\.tsx?)?$/.test(name)))).toEqual(
      [],
    );
  });

  test('no file only passes others on', () => {
    expect(files.filter((path) => /(^|\/)index\.tsx?$/.test(path))).toEqual([]);
  });

  // The files of the first load hold what they export by its value (.config/classic.ts).
  test('no file exports a variable that can change', () => {
    expect(sources.filter(({ text }) => /^export (let|var)\b/m.test(text)).map(({ path }) => path)).toEqual([]);
  });

  test('no file is over 300 lines', () => {
    const long = sources.map(({ path, text }) => ({ path, lines: text.split('\n').length - 1 })).filter(({ lines }) => lines > 300);
    expect(long).toEqual([]);
  });

  test('nothing else lies at the top', () => {
    const names = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'tsconfig.json',
      'package-lock.json',
      'src',
      'sw',
      'tests',
      'demo-data',
      'icons',
    ];
    const kept = execFileSync('git', ['ls-files'], { cwd: root, encoding: 'utf8', maxBuffer: 1e8 }).trim().split('\n');
    const tops = [...new Set(kept.map((path) => path.split('/')[0] ?? ''))].filter((name) => !name.startsWith('.'));
    expect(tops.filter((name) => !names.includes(name))).toEqual([]);
  });
});

describe('a form that keeps what is typed', () => {
  test('says when what was kept cannot be read', () => {
    const forms = sources.filter(({ text }) => /= useDraft[<(]/.test(withoutComments(text)));
    expect(forms.length).toBeGreaterThan(9);
    const silent = forms.filter(({ text }) => !/KeptDraft draft=|\bproblem(?:: lost)?,?\s*\} = useDraft[<(]/.test(text));
    expect(silent.map(({ path }) => path)).toEqual([]);
  });
});
