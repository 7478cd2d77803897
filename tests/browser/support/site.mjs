// The built dashboard over HTTP, as any file server would give it.
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { createServer as createSafeServer } from 'node:https';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of the built dashboard; SURAE_SITE names another one. */
export const siteFolder =
  process.env.SURAE_SITE ?? fileURLToPath(new URL('../../../apps/dashboard/dist/site', import.meta.url));

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

/**
 * Serves the site on a free port until `close` is called.
 *
 * @param {{ tls?: { key: string, cert: string }, beside?: Readonly<Record<string, string>>, keep?: boolean }} [options] - key and certificate as
 *   PEM make it a server over TLS; pages of a test by their paths, which share the store of the dashboard; whether a browser may keep
 *   the files whose names hold their hash, as hosts let it
 * @returns {Promise<{ origin: string, close: () => Promise<void> }>}
 */
export async function serveSite({ tls, beside = {}, keep = false } = {}) {
  if (!existsSync(join(siteFolder, 'index.html'))) {
    throw new Error('The dashboard is not built. Run: npx vite build apps/dashboard');
  }
  /** @type {import('node:http').RequestListener} */
  const answer = async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    if (beside[pathname] !== undefined) {
      response.writeHead(200, { 'content-type': types[extname(pathname)] });
      response.end(beside[pathname]);
      return;
    }
    const path = join(siteFolder, normalize(decodeURIComponent(pathname === '/' ? '/index.html' : pathname)));
    try {
      const bytes = await readFile(path);
      response.writeHead(200, {
        'content-type': types[extname(path)] ?? 'application/octet-stream',
        ...(keep && pathname.startsWith('/assets/') && { 'cache-control': 'max-age=86400, immutable' }),
      });
      response.end(bytes);
    } catch {
      response.writeHead(404);
      response.end();
    }
  };
  const server = tls === undefined ? createServer(answer) : createSafeServer(tls, answer);
  await new Promise((resolve) => server.listen(0, 'localhost', () => resolve(undefined)));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    origin: `${tls === undefined ? 'http' : 'https'}://localhost:${port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
