import { defineConfig } from 'vitest/config';

const conditions = ['surae-source', 'module', 'node', 'development|production'];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          maxWorkers: 2,
          // what is tested keeps no state between calls, so the files of one worker share what they import: half the time
          isolate: false,
          restoreMocks: true,
          unstubGlobals: true,
          unstubEnvs: true,
        },
      },
      {
        extends: true,
        // one page after the other, and not beside the rest: they look at times that a busy machine would spoil
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
