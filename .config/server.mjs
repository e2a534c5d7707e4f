import { readdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, relative, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { headerPolicy } from './csp.mjs';

/** @type {Record<string, string>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.jsonl': 'application/jsonl; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** @typedef {{ url: string, port: number, stop: () => Promise<void> }} Served */

/**
 * Serves a built app from memory: only what was there at the start can be asked for, and a rebuild meanwhile mixes nothing.
 * @param {{ dir: string, port?: number, base?: string }} options `port` 0 takes a free one; `base` is a sub-path such as `/studio/`
 * @returns {Promise<Served>}
 */
export function serveApp({ dir, port = 0, base = '/' }) {
  const files = readAll(dir, base);
  const server = createServer((request, response) => {
    const path = (request.url ?? '/').split(/[?#]/, 1)[0] ?? '/';
    const file = files.get(path.endsWith('/') ? `${path}index.html` : path);
    const headers = { 'content-security-policy': headerPolicy, 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer' };
    if (request.method !== 'GET' && request.method !== 'HEAD') response.writeHead(405, headers).end();
    else if (!file) response.writeHead(404, { ...headers, 'content-type': 'text/plain' }).end('Nothing here.\n');
    else {
      const sent = /\bgzip\b/.test(request.headers['accept-encoding'] ?? '') ? packed(file) : file;
      response.writeHead(200, { ...headers, ...sent.headers }).end(request.method === 'HEAD' ? undefined : sent.body);
    }
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => {
      const address = server.address();
      const taken = address && typeof address === 'object' ? address.port : port;
      const stop = () => {
        /** @type {Promise<void>} */
        const stopped = new Promise((done) => server.close(() => done()));
        server.closeAllConnections();
        return stopped;
      };
      resolve({ url: `http://localhost:${taken}${base}`, port: taken, stop });
    });
  });
}

/** @typedef {{ body: Buffer, headers: Record<string, string | number>, packed?: SentFile }} SentFile */

/** As any static host sends text: compressed, once. Pictures are so already. @param {SentFile} file @returns {SentFile} */
function packed(file) {
  if (String(file.headers['content-type']).startsWith('image/png')) return file;
  if (!file.packed) {
    const body = gzipSync(file.body);
    file.packed = {
      body,
      headers: { ...file.headers, 'content-length': body.length, 'content-encoding': 'gzip', vary: 'accept-encoding' },
    };
  }
  return file.packed;
}

/** @param {string} dir @param {string} base @returns {Map<string, SentFile>} */
function readAll(dir, base) {
  /** @type {Map<string, SentFile>} */
  const files = new Map();
  for (const file of readdirSync(dir, { withFileTypes: true, recursive: true })) {
    const path = relative(dir, join(file.parentPath, file.name)).split(sep).join('/');
    if (!file.isFile() || path.startsWith('.')) continue;
    const body = readFileSync(join(file.parentPath, file.name));
    const keep = path.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
    const headers = {
      'content-type': types[extname(path)] ?? 'application/octet-stream',
      'content-length': body.length,
      'cache-control': keep,
    };
    files.set(encodeURI(base + path), { body, headers });
  }
  return files;
}
