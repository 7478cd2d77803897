import { defineConfig } from 'vite';

/** What a run needs in few files: Node looks up and reads a thousand modules in a second, and most of them are never used. */
export default defineConfig({
  root: import.meta.dirname,
  resolve: { conditions: ['surae-source', 'module', 'node', 'development|production'] },
  ssr: {
    noExternal: true,
    external: ['piscina', 'yauzl', 'bullmq', 'pg'],
    resolve: { conditions: ['surae-source', 'module', 'node', 'development|production'] },
  },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/packed',
    emptyOutDir: true,
    minify: false,
    rollupOptions: {
      input: { main: 'src/main.ts', 'assess-worker': 'src/assess-worker.ts', 'second-worker': 'src/second-worker.ts' },
      preserveEntrySignatures: 'strict',
      output: { entryFileNames: '[name].js', chunkFileNames: '[name].js' },
    },
  },
});
