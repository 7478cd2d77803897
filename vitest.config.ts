import { defineConfig } from 'vitest/config';

const conditions = ['surae-source', 'module', 'node', 'development|production'];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    include: ['tests/**/*.test.ts'],
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
  },
});
