// Lets a script of Node's use the project's TypeScript, through Vite.
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

export const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * @template T
 * @param {string} path of a module, from the project's root: `/tests/…`
 * @param {(module: Record<string, (options: unknown) => Promise<T>>) => Promise<T>} job what is done with what it exports
 * @returns {Promise<T>}
 */
export async function withModule(path, job) {
  const vite = await createServer({
    configFile: false,
    root,
    appType: 'custom',
    optimizeDeps: { noDiscovery: true },
    server: { middlewareMode: true, ws: false, watch: null },
  });
  try {
    return await job(await vite.ssrLoadModule(path));
  } finally {
    await vite.close();
  }
}
