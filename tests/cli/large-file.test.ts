import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Recording } from '@surae/records';
import { simulateSet } from '@surae/simulation';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readLargeFile, readParts } from '../../apps/cli/src/large-file.ts';
import { readLastPart } from '../../apps/cli/src/last-part.ts';
import { traceCsv } from '../../apps/cli/src/trace-csv.ts';
import { isLong } from '../support/runs.ts';

const folder = mkdtempSync(join(tmpdir(), 'surae-large-'));
afterAll(() => rmSync(folder, { recursive: true }));

beforeAll(() => {
  // a thread runs what was built
  if (!existsSync('apps/cli/dist/second-worker.js')) throw new Error('the command is not built: npm run build');
});

interface Compared {
  readonly status: 'ok' | 'refused';
  readonly sha256: string | null;
  readonly reason?: string;
  readonly inParts: boolean;
  /** whether one thread alone comes to the very same */
  readonly isSame: boolean;
}

function compared(files: readonly (readonly [path: string, placement: string])[]): readonly Compared[] {
  const { stdout, stderr } = spawnSync(process.execPath, ['tests/support/two-threads.mjs', JSON.stringify(files)], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  expect(stderr).toBe('');
  return JSON.parse(stdout) as Compared[];
}

function written(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

test('two threads come to the report of one, to the last bit, whatever the placement', () => {
  const files = (['heel', 'foot', 'trunk', 'platform'] as const).map((placement) => {
    const { trace } = simulateSet({ placement, level: 'typical', seed: 5, count: 4 });
    return [written(`${placement}.csv`, traceCsv(trace, [])), placement] as const;
  });
  for (const [i, found] of compared(files).entries()) {
    const sha256 = createHash('sha256').update(readFileSync(files[i][0])).digest('hex');
    expect(found, files[i][1]).toEqual({ status: 'ok', sha256, inParts: true, isSame: true });
  }
});

test('two threads refuse what one refuses, in the same words', () => {
  const rows = Array.from({ length: 40 }, (_, i) => `${i / 50},${i},a\n`).join('');
  // in a column that nobody reads, further on than a header is looked for
  const nul = written(
    'nul.csv',
    `time [s],heel_height [mm],note\n# ${'x'.repeat(1 << 20)}\n${rows.replace('30,a', '30,\0')}`,
  );
  // a thread for each of them takes most of a second
  const broken = readdirSync('fixtures/broken')
    .filter((_, at) => isLong || at % 4 === 0)
    .map((name) => join('fixtures/broken', name));
  expect(broken.length).toBeGreaterThan(0);
  const found = compared([...broken, nul].map((path) => [path, 'heel']));
  for (const one of found) expect(one).toMatchObject({ status: 'refused', inParts: false, isSame: true });
  expect(found.at(-1)!.reason).toContain('NUL');
});

/** Rows of a heel that goes up and down, more than are read at once. */
const rows = Array.from(
  { length: 120_000 },
  (_, i) => `${(i / 100).toFixed(2)},${(50 * (1 + Math.sin(i / 50))).toFixed(3)}\n`,
);
const HEADER = 'time [s],heel_height [mm]\n';

test('a file of several pieces is hashed whole, and one with a note longer than a piece is read in one', () => {
  const noted = [...rows.slice(0, 900), `# ${'x'.repeat(1_500_000)}\n`, ...rows.slice(900, 1800)];
  const files = [rows, noted].map((lines, i) => written(`long-${i}.csv`, HEADER + lines.join('')));
  for (const [i, found] of compared(files.map((path) => [path, 'heel'])).entries()) {
    const sha256 = createHash('sha256').update(readFileSync(files[i])).digest('hex');
    expect(found).toEqual({ status: 'ok', sha256, inParts: i === 0, isSame: true });
  }
});

/** What comes of a file whose other reader sees another one in its place. */
async function readBeside(file: string, ofOther: string): Promise<Recording | undefined> {
  const [here, there] = [openSync(file, 'r'), openSync(ofOther, 'r')];
  try {
    return await readParts(here, { readLast: (_, part) => Promise.resolve(readLastPart(there, part)) });
  } finally {
    closeSync(here);
    closeSync(there);
  }
}

test('a file that changes between the two readers is not taken, since its hash would be of other rows', async () => {
  const text = HEADER + rows.join('');
  const file = written('kept.csv', text);
  const read = await readBeside(file, file);
  expect(read?.groups[0].timesS).toHaveLength(rows.length);
  expect(read?.source).toEqual({
    sha256: createHash('sha256').update(text).digest('hex'),
    byteLength: text.length,
  });
  const changed = text.replace('50.00', '51.00');
  expect(changed).not.toBe(text);
  for (const [name, other] of Object.entries({
    changed,
    cut: text.slice(0, -9),
    zero: text.replace('50.00', '50\0.0'),
  }))
    expect(await readBeside(file, written(`${name}.csv`, other)), name).toBeUndefined();
});

test('what a second thread that ends meanwhile had in hand is left to one reader', async () => {
  const file = openSync(written('left.csv', HEADER + rows.slice(0, 2000).join('')), 'r');
  try {
    expect(await readParts(file, { readLast: () => Promise.resolve(undefined) })).toBeUndefined();
  } finally {
    closeSync(file);
  }
});

test('what is small, a folder or not there is left to one thread', async () => {
  expect(await readLargeFile(written('small.csv', 'time [s],heel_height [mm]\n'))).toBeUndefined();
  expect(await readLargeFile(folder, 1)).toBeUndefined();
  expect(await readLargeFile(join(folder, 'gone.csv'), 1)).toBeUndefined();
});
