// What files come to that two threads read, beside what they come to in one: node two-threads.mjs [[PATH, PLACEMENT], ...]
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { assessFile } from '../../apps/cli/dist/assess-file.js';
import { readLargeFile } from '../../apps/cli/dist/large-file.js';
import { usualSettings } from '../../apps/cli/dist/settings-file.js';

const readFile = (path) => Promise.resolve(new Uint8Array(readFileSync(path)));

async function compared(path, placement) {
  const item = { file: 'a.csv', path, about: { placement }, carried: {} };
  let inParts = false;
  const readLarge = async (of) => {
    const large = await readLargeFile(of, 1);
    inParts = large !== undefined;
    return large;
  };
  const one = await assessFile(item, usualSettings(), { readFile });
  const two = await assessFile(item, usualSettings(), { readFile, readLarge });
  const { status, sha256, reason } = two;
  return { status, sha256, reason, inParts, isSame: isDeepStrictEqual(two, one) };
}

const found = [];
for (const [path, placement] of JSON.parse(process.argv[2])) found.push(await compared(path, placement));
process.stdout.write(JSON.stringify(found));
