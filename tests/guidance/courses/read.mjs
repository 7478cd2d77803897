// Prints invented courses to be read line by line: node tests/guidance/courses/read.mjs [NAME] [SEED] [every]
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const [name, seed = '1', every] = process.argv.slice(2);
const { module } = await runnerImport(fileURLToPath(new URL('printed.ts', import.meta.url)), {
  configFile: false,
  logLevel: 'error',
  root: fileURLToPath(new URL('../../..', import.meta.url)),
});
const names = name === undefined ? module.names : [name];
for (const one of names) process.stdout.write(`${module.printed(one, Number(seed), every === 'every')}\n`);
