import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** The small page on which devices are tried, bundled from the sources as the dashboard is. */
async function bundle(entry: string): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    root: fileURLToPath(new URL('.', import.meta.url)),
    resolve: { conditions: ['surae-source', 'module', 'browser', 'development|production'] },
    build: {
      write: false,
      minify: false,
      target: 'es2023',
      // one file, whatever is loaded later elsewhere
      rolldownOptions: { output: { codeSplitting: false } },
      lib: { entry: fileURLToPath(new URL(entry, import.meta.url)), formats: ['es'], fileName: 'page' },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (!('output' in first)) throw new Error('The page of the device tests was watched and not built.');
  return first.output[0].code;
}

export interface DevicePage {
  readonly origin: string;
  readonly close: () => Promise<void>;
}

/** Serves the page on a free port; a name of another origin makes it insecure. */
export async function servePage(entry = 'page.ts'): Promise<DevicePage> {
  const script = await bundle(entry);
  const server = createServer((request, response) => {
    const isScript = request.url === '/page.js';
    const isPage = request.url === '/';
    response.writeHead(isScript || isPage ? 200 : 204, {
      'content-type': isScript ? 'text/javascript; charset=utf-8' : 'text/html; charset=utf-8',
    });
    if (isScript) response.end(script);
    else if (isPage)
      response.end('<!doctype html><title>devices</title><script type="module" src="/page.js"></script>');
    else response.end();
  });
  await new Promise<void>((resolve) => server.listen(0, 'localhost', () => resolve()));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    origin: `http://localhost:${port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
