import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const conditions = ['surae-source', 'module', 'node', 'development|production'];

const inBrowser = (names: readonly string[]): string[] => names.map((name) => `tests/browser/${name}.test.ts`);

/** Tests in a browser that watch a running set, a load or a clock. */
const moments = inBrowser([
  'interruptions',
  'journey',
  'killed',
  'live-motion',
  'page-faults',
  'pushes',
  'set-up',
  'stop',
  'two-sensors',
]);

/** Pages that are only looked at share the workers, two more than two cores: a browser waits most of the time. */
const workers = 4;

/** Files that take long, though some of them are short to read: they begin, so that no worker is left alone with one at the end. */
const long =
  /tests\/(?:accuracy|open-recordings)\/|(?:simulate-set|detect-body|find-efforts|killed|killed-taking-in|live-sensors|live-losses|accessibility|language-states|bluetooth|kept-sets|comparisons)\.test/;

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification): boolean => long.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

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
    sequence: { sequencer: LongFirst },
    projects: [
      {
        extends: true,
        resolve: { conditions },
        ssr: { resolve: { conditions } },
        test: {
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          // these compute all the time, and every worker reads the sources once more
          maxWorkers: availableParallelism(),
          // what is tested keeps no state between calls, so the files of one worker share what they import: half the time
          isolate: false,
          restoreMocks: true,
          unstubGlobals: true,
          unstubEnvs: true,
        },
      },
      {
        extends: true,
        test: {
          name: 'pages',
          ...builtPackages,
          include: ['tests/browser/**/*.test.ts'],
          exclude: moments,
          maxWorkers: workers,
          // as above; each test has a store of its own in the browser
          isolate: false,
          sequence: { groupOrder: 1 },
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
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
