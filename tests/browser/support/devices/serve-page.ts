import { createServer } from 'node:http';
import { bundled } from '../bundled.mjs';

export interface DevicePage {
  readonly origin: string;
  readonly close: () => Promise<void>;
}

/** Serves the page on a free port; a name of another origin makes it insecure. */
export async function servePage(entry = 'page.ts'): Promise<DevicePage> {
  const script = await bundled(new URL(entry, import.meta.url));
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
