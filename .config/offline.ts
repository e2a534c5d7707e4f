import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build, type Plugin } from 'vite';

export interface Precached {
  readonly url: string;
  readonly revision: string | null;
}

/** Files Vite has put a content hash into the name of; their address changes whenever they do. */
const hashed = /^assets\/.+-[\w-]{8}\.\w+$/;

/** Every file of the built app with what tells one version of it from the next, in a steady order. */
export function precacheList(outDir: string): Precached[] {
  return (
    readdirSync(outDir, { withFileTypes: true, recursive: true })
      .filter((file) => file.isFile())
      .map((file) => relative(outDir, join(file.parentPath, file.name)).split(sep).join('/'))
      // Pictures for the install dialog are shown by the browser before there is an app to keep.
      .filter((url) => !url.startsWith('.') && !url.startsWith('screens/') && url !== 'sw.js')
      .sort()
      .map((url) => ({ url, revision: hashed.test(url) ? null : contentHash(join(outDir, url)) }))
  );
}

interface Chunk {
  readonly name?: string;
  readonly file: string;
  readonly imports?: readonly string[];
}

/** The app's own files, which the page asks for in code, and those that they import. */
function appFiles(outDir: string): string[] {
  const manifest = JSON.parse(readFileSync(join(outDir, '.vite/manifest.json'), 'utf8')) as Record<string, Chunk>;
  const chunks = ['app', 'stage'].map((wanted) => {
    const chunk = Object.values(manifest).find(({ name }) => name === wanted);
    if (!chunk) throw new Error(`The build has no file named ${wanted}`);
    return chunk;
  });
  const imported = chunks.flatMap(({ imports }) => imports ?? []).map((name) => manifest[name] as Chunk);
  return [...new Set([...chunks, ...imported].map(({ file }) => file))];
}

function contentHash(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex').slice(0, 16);
}

/** After the app is written, bundles the service worker beside it with the list of everything to keep for offline use. */
export function offline(worker: string): Plugin {
  let outDir = '';
  return {
    name: 'offline',
    apply: 'build',
    configResolved: (config) => {
      outDir = config.build.outDir;
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler: async () => {
        await build({
          configFile: false,
          publicDir: false,
          logLevel: 'warn',
          define: { 'self.__PRECACHE': JSON.stringify(precacheList(outDir)), 'self.__APP': JSON.stringify(appFiles(outDir)) },
          build: {
            outDir,
            emptyOutDir: false,
            target: 'es2022',
            // A classic script: browsers learnt module service workers late.
            rolldownOptions: { input: worker, output: { format: 'iife', entryFileNames: 'sw.js' } },
          },
        });
      },
    },
  };
}
