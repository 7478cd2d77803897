import { existsSync, readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { dealt, inEveryRun } from './tests/browser/support/shares.mjs';

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

/** Pages that are only looked at share the workers, three more than two cores: a browser waits most of the time. */
const workers = 5;

/**
 * Files that take long, the longest first, though many of them are short to read: they begin, so that no worker is left alone with one
 * at the end.
 */
const longest: readonly string[] = [
  ...['cli/cluster/several-machines', 'cli/thread-pool', 'cli/research-page', 'raises/detect-body'],
  ...['simulation/simulate-set', 'efforts/find-efforts', 'tests/open-recordings/', 'tests/accuracy/'],
  ...['shared/tables/guidance/rule-entry', 'conventions/dependencies', 'cli/bin', 'assess/recount'],
  ...inBrowser(['accessibility', 'language-states', 'live-losses', 'recount-study', 'endings', 'hand-over', 'plan']),
  ...inBrowser(['choice', 'sensors-page', 'bluetooth', 'demo-courses', 'offline', 'study', 'study-results', 'lock']),
  ...inBrowser(['people', 'off-plate', 'import', 'rules', 'course', 'advice', 'comparisons', 'live-serial']),
  ...inBrowser(['kept-sets', 'killed-taking-in', 'acceptance', 'sensor-faults', 'design', 'visits', 'clinic']),
  ...inBrowser(['same-leg', 'activity', 'course-load', 'legs', 'thumb-side', 'episodes', 'export', 'recount']),
  ...inBrowser(['lost-clinic', 'live-sensors', 'comparison-accessibility', 'push-accessibility', 'own-errors']),
  ...inBrowser(['push-comparisons', 'fact-asks', 'hand-count', 'torn-log', 'bluetooth-stream', 'secure-host']),
  ...inBrowser(['live-count', 'run-file', 'languages', 'pushes', 'interruptions', 'page-faults', 'set-up', 'stop']),
  ...inBrowser(['killed']),
];

/** Place of a file among those that take long; behind them all where it is none. */
function placeOf(path: string): number {
  const at = longest.findIndex((name) => path.includes(name));
  return at === -1 ? longest.length : at;
}

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((one, other) => placeOf(one.moduleId) - placeOf(other.moduleId));
  }
}

/** Tests in a browser, all of them where no share is asked for (`SURAE_PAGES`, from 1 on). */
function pagesOfRun(): string[] {
  const names = readdirSync(new URL('tests/browser', import.meta.url))
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => name.slice(0, -'.test.ts'.length))
    .sort((one, other) => placeOf(inBrowser([one])[0]) - placeOf(inBrowser([other])[0]));
  const share = Number(process.env.SURAE_PAGES ?? 0);
  return inBrowser(share === 0 ? names : [...inEveryRun, ...dealt(names)[share - 1]]);
}
const pages = pagesOfRun();

/**
 * A test in a browser is tried a second time where the first went wrong: four browsers on two cores come late now and then. Those that
 * needed it are named at the end of the run, since each is a fault of its own.
 */
const retry = 1;

/** Tests of pages know the packages as they were built, as the page does: they are loaded and not translated once more. */
const builtPackages = { server: { deps: { external: [/\/(?:packages\/\w+|shared|apps\/\w+)\/dist\//] } } };

/**
 * After a build the tests of Node too take the packages as they were built, module for module: Node loads them as they are, where each
 * would be translated and handed over once more.
 */
const asBuilt: Plugin = {
  name: 'sources-as-built',
  enforce: 'pre',
  async resolveId(source, importer, options) {
    const resolved = await this.resolve(source, importer, { ...options, skipSelf: true });
    if (resolved === null || !/\/(?:packages\/\w+|shared|apps\/\w+)\/src\/.*\.ts$/.test(resolved.id)) return resolved;
    const built = resolved.id.replace('/src/', '/dist/').replace(/\.ts$/, '.js');
    return existsSync(built) ? built : resolved;
  },
};
const isBuilt = process.env.SURAE_BUILT === '1';

/**
 * Recordings are cleared away in fewer and larger steps, a fifth of the time of a detection [MB], and by no further thread. Tests are
 * many and short: of V8 11 (Node 20) code is compiled to its fastest form later, a tenth of the time; later ones do not know that flag.
 */
const execArgv = ['--max-semi-space-size=64', '--single-threaded-gc'];
if (process.versions.v8.startsWith('11.')) execArgv.push('--interrupt-budget=500000');

/** A run that would go over midnight is one of three hours earlier, for Node and the browser: visits of today stay visits of today. */
if (new Date().getHours() === 23) process.env.TZ = 'Etc/GMT+3';

export default defineConfig({
  test: {
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // what is waited for comes later on a busy machine; without this it has one second
    expect: { poll: { timeout: 30_000 } },
    execArgv,
    sequence: { sequencer: LongFirst },
    projects: [
      {
        extends: true,
        ...(isBuilt ? { plugins: [asBuilt] } : { resolve: { conditions }, ssr: { resolve: { conditions } } }),
        test: {
          name: 'node',
          ...(isBuilt && builtPackages),
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
          include: pages.filter((path) => !moments.includes(path)),
          retry,
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
          include: pages.filter((path) => moments.includes(path)),
          retry,
          maxWorkers: 3,
          isolate: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
