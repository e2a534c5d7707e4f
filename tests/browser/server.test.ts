import { request } from 'node:http';
import { expect, inject, test } from 'vitest';

/** Asks for a path just as it is written: `fetch` would tidy it first. */
function get(path: string, method = 'GET'): Promise<{ status: number; headers: Record<string, unknown>; body: string }> {
  const { hostname, port } = new URL(inject('appUrl'));
  return new Promise((resolve, reject) => {
    request({ hostname, port, path, method }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(parts).toString() }),
      );
    })
      .on('error', reject)
      .end();
  });
}

test.each([
  '/../package.json',
  '/%2e%2e/package.json',
  '/..%2fpackage.json',
  '/assets/../../package.json',
  '/.vite/manifest.json',
  '//etc/passwd',
])('gives nothing at %s', async (path) => {
  expect((await get(path)).status).toBe(404);
});

test('takes no changes', async () => {
  expect((await get('/', 'POST')).status).toBe(405);
});

test('has the policy in force on the page, in a header and in the page itself', async () => {
  const { headers, body } = await get('/');
  const policy = String(headers['content-security-policy']);
  expect(policy).toMatch(/^default-src 'none'; script-src 'self' 'wasm-unsafe-eval';.* frame-ancestors 'none'$/);
  expect(policy).not.toContain('unsafe-inline');
  expect(body.replaceAll('&#39;', "'")).toContain(policy.replace(/; frame-ancestors.*/, ''));
});

test('keeps what has its content in its name, and asks again for the rest', async () => {
  const { headers, body } = await get('/');
  const script = /\.(\/assets\/[^"]+\.js)/.exec(body)?.[1] ?? '';
  expect(headers['cache-control']).toBe('no-cache');
  expect((await get('/sw.js')).headers['cache-control']).toBe('no-cache');
  expect((await get(script)).headers['cache-control']).toContain('immutable');
  expect((await get(script)).headers['content-type']).toContain('text/javascript');
  expect((await get('/manifest.webmanifest')).headers['content-type']).toBe('application/manifest+json');
});
