import { defineConfig } from 'vitest/config';

const conditions = ['surae-source', 'module', 'node', 'development|production'];

const inBrowser = (names: readonly string[]): string[] => names.map((name) => `tests/browser/${name}.test.ts`);

/** Tests in a browser that watch a running set, a load or a clock. */
const moments = inBrowser([
  'interruptions',
  'journey',
  'killed',
  'live-motion',
  'pushes',
  'set-up',
  'stop',
  'two-sensors',
]);

/** Builds the page anew, under whoever is served it. */
const alone = inBrowser(['start']);

/** Two more than two cores: see below. */
const workers = 4;

/** Tests of pages know the packages as they were built, as the page does: they are loaded and not translated once more. */
const builtPackages = { server: { deps: { external: [/\/(?:packages|shared|apps)\/[^?]*\/dist\//] } } };

/** Recordings are cleared away in fewer and larger steps: a fifth of the time of a detection [MB]. */
const execArgv = ['--max-semi-space-size=64'];

export default defineConfig({
  test: {
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    execArgv,
    projects: [
      {
        extends: true,
        resolve: { conditions },
        ssr: { resolve: { conditions } },
        test: {
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          maxWorkers: workers,
          // what is tested keeps no state between calls, so the files of one worker share what they import: half the time
          isolate: false,
          restoreMocks: true,
          unstubGlobals: true,
          unstubEnvs: true,
        },
      },
      {
        extends: true,
        // pages that are only looked at share the workers: a browser waits most of the time
        test: {
          name: 'pages',
          ...builtPackages,
          include: ['tests/browser/**/*.test.ts'],
          exclude: [...moments, ...alone],
          maxWorkers: workers,
          // as above; each test has a store of its own in the browser
          isolate: false,
        },
      },
      {
        extends: true,
        // these look at times that a busy machine would spoil: three at a time, when all else is done: they wait most of it
        test: {
          name: 'moments',
          ...builtPackages,
          include: moments,
          maxWorkers: 3,
          isolate: false,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: { name: 'alone', ...builtPackages, include: alone, sequence: { groupOrder: 2 } },
      },
    ],
  },
});
