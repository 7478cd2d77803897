// Prints what the analysis measures on the open recordings: node tests/open-recordings/table.mjs
import { fileURLToPath } from 'node:url';
import { createViteServer } from 'vitest/node';

const root = fileURLToPath(new URL('../..', import.meta.url));
const server = await createViteServer({
  root,
  configFile: fileURLToPath(new URL('../../vitest.config.ts', import.meta.url)),
  server: { middlewareMode: true, watch: null },
  appType: 'custom',
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
});
try {
  const { openFigures } = await server.ssrLoadModule('/tests/support/open-figures.ts');
  console.log(openFigures());
} finally {
  await server.close();
}
