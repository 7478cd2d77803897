// npm start: installs what is missing, builds, then simulates one set and shows its assessment.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));

function run(command, args, options = {}) {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', ...options });
  if (error) console.error(`${command}: ${error.message}`);
  if (status !== 0) process.exit(status ?? 1);
}

if (!existsSync('node_modules/.package-lock.json')) {
  console.log('Installing what is missing ...');
  run('npm', ['ci', '--no-audit', '--no-fund']);
}
console.log('Building ...');
run('npx', ['tsc', '-b']);

const folder = mkdtempSync(join(tmpdir(), 'surae-'));
try {
  const surae = ['apps/cli/bin/surae.js'];
  const quiet = { stdio: ['ignore', 'ignore', 'inherit'] };
  run(
    process.execPath,
    [...surae, 'simulate', '--placement', 'foot', '--level', 'typical', '--seed', '4', '--out', folder],
    quiet,
  );
  console.log('\nOne simulated set, a sensor on the foot:\n');
  run(process.execPath, [...surae, 'assess', '--manifest', join(folder, 'manifest.csv')]);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log(`
The browser dashboard is not there yet. Until then the command line does the whole job:
  npx surae --help
  npx surae assess --help`);
