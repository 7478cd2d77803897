#!/usr/bin/env node
import { readdirSync, statSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';

// What lasts is looked through by the thread that owns it: where workers fill the cores, one more that looks along costs more than it
// saves. V8 takes this only before it has begun to look, so that it stands before everything is loaded.
setFlagsFromString('--no-concurrent-marking');
// what is loaded makes the room for short-lived things grow to what a run over thousands of files then fills for nothing
if (process.argv[2] === 'assess') setFlagsFromString('--semi-space-growth-factor=1');

const root = new URL('../../../', import.meta.url);

/** When something was made; before everything where it was not. */
function madeAt(path) {
  return statSync(new URL(path, root), { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

/** Everything that is compiled for the command leaves a mark when it is. */
function compiledAt() {
  const packages = readdirSync(new URL('packages/', root)).map((name) => `packages/${name}`);
  return Math.max(...['shared', 'apps/cli', ...packages].map((folder) => madeAt(`${folder}/dist/.tsbuildinfo`)));
}

// packed into few files it starts in a third of the time; one that is older than what was compiled since is passed over
const isPacked = madeAt('apps/cli/dist/packed/main.js') > compiledAt();
const { main } = await import(isPacked ? '../dist/packed/main.js' : '../dist/main.js');

process.exitCode = await main(process.argv.slice(2));
