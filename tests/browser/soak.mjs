// npm run soak: a set of half an hour, six channels at 1000 Hz, over a mock radio; -- 60 makes it a minute.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));

const [given = '1800'] = process.argv.slice(2);
const lengthS = Number(given);
if (!(lengthS > 0)) {
  console.error(`The length of a soak is a number of seconds above 0, and not ${given}.`);
  process.exit(2);
}
const args = ['node_modules/vitest/vitest.mjs', 'run', '--project', 'pages', 'tests/browser/soak.test.ts'];
const { status } = spawnSync(process.execPath, args, {
  stdio: 'inherit',
  env: { ...process.env, SURAE_SOAK_S: `${lengthS}` },
});
process.exitCode = status ?? 1;
