// Runs every check and ends with one line: N passed, N failed.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const long = process.argv.includes('--long');
let passed = 0;
let failed = 0;

function run(command, args, environment = {}) {
  const result = spawnSync(command, args, {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    env: { ...process.env, ...environment },
  });
  return { ok: result.status === 0, output: `${result.stdout ?? ''}${result.stderr ?? ''}` };
}

function check(name, command, args) {
  const { ok, output } = run(command, args);
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${name}`);
  if (!ok) console.log(output);
  if (ok) passed += 1;
  else failed += 1;
}

if (!existsSync('node_modules/.package-lock.json')) check('install', 'npm', ['ci', '--no-audit', '--no-fund']);
check('types and build', 'npx', ['tsc', '-b']);
check('lint', 'npx', ['eslint', '.']);
check('format', 'npx', ['biome', 'check', '.']);

const unit = run(
  'npx',
  ['vitest', 'run', '--reporter=json', '--reporter=default', '--outputFile.json=dist/unit.json'],
  {
    SURAE_LONG: long ? '1' : '',
  },
);
console.log(unit.output);
const { readFileSync } = await import('node:fs');
try {
  const report = JSON.parse(readFileSync('dist/unit.json', 'utf8'));
  passed += report.numPassedTests;
  failed += report.numFailedTests + (report.success || report.numFailedTests > 0 ? 0 : 1);
} catch {
  failed += 1;
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
