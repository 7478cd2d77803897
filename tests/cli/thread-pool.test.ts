import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { simulateSet } from '@surae/simulation';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { traceCsv } from '../../apps/cli/src/trace-csv.ts';
import { inRun } from '../support/runs.ts';

const BIN = resolve('apps/cli/bin/surae.js');
const folder = mkdtempSync(join(tmpdir(), 'surae-threads-'));
const FILES = 7;

beforeAll(() => {
  if (!existsSync('apps/cli/dist/main.js')) throw new Error('the command is not built: npm run build');
  const rows = ['file,person,visit,side,placement'];
  for (let at = 0; at < FILES; at += 1) {
    const { trace } = simulateSet({ placement: 'heel', level: 'clean', seed: 1 + (at % 5), count: 3 });
    writeFileSync(join(folder, `${at}.csv`), traceCsv(trace, []));
    rows.push(`${at}.csv,P${at >> 2},${at >> 1},${at % 2 === 0 ? 'left' : 'right'},heel`);
  }
  writeFileSync(join(folder, 'bad.csv'), 'no table');
  rows.splice(3, 0, 'bad.csv,P1,1,left,heel', 'gone.csv,P1,1,left,heel');
  writeFileSync(join(folder, 'm.csv'), rows.join('\n'));
});

afterAll(() => rmSync(folder, { recursive: true }));

const ENV = { ...process.env, LANG: 'C.UTF-8' };

function surae(...args: string[]) {
  return spawnSync(process.execPath, [BIN, 'assess', ...args], { encoding: 'utf8', env: ENV, cwd: folder });
}

function begun(...args: string[]): ChildProcess {
  return spawn(process.execPath, [BIN, 'assess', ...args], { env: ENV, cwd: folder, stdio: ['pipe', 'pipe', 'pipe'] });
}

const ended = (child: ChildProcess): Promise<number | null> => new Promise((done) => void child.once('exit', done));

function tables(out: string): Record<string, string> {
  const names = readdirSync(join(folder, out)).sort();
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, out, name), 'latin1')]));
}

test('one thread and several write the same bytes', () => {
  const [one, ...others] = inRun(['1', '3'], ['1', '2', '3']).map((workers) => {
    const out = `out-${workers}`;
    const { stderr, stdout, status } = surae(
      '--manifest',
      'm.csv',
      '--csv',
      out,
      '--parquet',
      out,
      '--workers',
      workers,
    );
    expect(stderr.replaceAll(out, 'out')).toMatch(/^Refused, 2 of 9:/);
    expect(status).toBe(1);
    return { tables: tables(out), said: stdout.replaceAll(out, 'out') };
  });
  expect(Object.keys(one.tables)).toEqual(expect.arrayContaining(['sides.csv', 'sides.parquet', 'refused.csv']));
  for (const other of others) expect(other).toEqual(one);
});

/** Waits until so many results are in a journal. */
async function kept(name: string, count: number): Promise<void> {
  const path = join(folder, name);
  await expect
    .poll(() => (existsSync(path) ? readFileSync(path, 'latin1').split('\n').length - 2 : 0), { interval: 5 })
    .toBeGreaterThanOrEqual(count);
}

test.each(['SIGKILL', 'SIGINT'] as const)(
  'after %s the same command goes on and writes the same bytes',
  async (name) => {
    const out = `cut-${name}`;
    const args = ['--manifest', 'm.csv', '--csv', out, '--parquet', out, '--workers', '1'];
    const child = begun(...args);
    let said = '';
    child.stderr!.on('data', (chunk: Buffer) => (said += chunk.toString()));
    await kept(`${out}.journal`, 4);
    child.kill(name);
    const code = await ended(child);
    const isWhole = existsSync(join(folder, out, 'sets.csv'));
    if (!isWhole && name !== 'SIGKILL') {
      expect(code).toBe(130);
      expect(said).toMatch(
        /^Stopped, \d of 9 done: their results are in .*, and the same command goes on from there\.\n$/,
      );
      expect(readdirSync(join(folder, out))).toEqual([]);
    }
    const again = surae(...args, ...(isWhole ? ['--replace'] : []));
    expect(again.status).toBe(1);
    expect(again.stderr).toMatch(/\d of 9 results are from cut-/);
    expect(tables(out)).toEqual(tables('out-1'));
  },
);

test('a recording that needs more memory than its worker has is refused alone', () => {
  // every remark above the header is kept as a text of its own
  writeFileSync(join(folder, 'large.csv'), `${'# a remark\n'.repeat(3_000_000)}time [s],heel_height [mm]\n0,1\n`);
  const { stdout, status } = surae(
    ...['0.csv', 'large.csv', '1.csv', '--placement', 'heel', '--json', '--workers', '1', '--memory-mb', '64'],
  );
  const lines = stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
  expect(lines.map((line) => line['status'])).toEqual(['ok', 'refused', 'ok']);
  expect(lines[1]['reason']).toBe(
    'large.csv: the memory of its worker was not enough: give each more with --memory-mb',
  );
  expect(status).toBe(1);
});

test('a scheduler that sends a line and waits has its answer before it sends the next', async () => {
  const child = begun('--stdin', '--placement', 'heel', '--workers', '2');
  let out = '';
  child.stdout!.on('data', (chunk: Buffer) => (out += chunk.toString()));
  for (let at = 0; at < 3; at += 1) {
    child.stdin!.write(`${at}.csv\n`);
    await expect.poll(() => out.split('\n').length - 1, { interval: 5 }).toBe(at + 1);
  }
  child.stdin!.end();
  expect(await ended(child)).toBe(0);
  const files = out
    .trim()
    .split('\n')
    .map((line) => (JSON.parse(line) as { file: string }).file);
  expect(files).toEqual(['0.csv', '1.csv', '2.csv']);
});

test.skipIf(process.platform === 'win32')('a reader that goes away ends it quietly', () => {
  const names = Array.from({ length: 60 }, (_, at) => `${at % FILES}.csv`).join('\n');
  writeFileSync(join(folder, 'names.txt'), names);
  const line = `"${process.execPath}" "${BIN}" assess --stdin --placement heel < names.txt | head -n 1`;
  const { stdout, stderr } = spawnSync('bash', ['-c', `set -o pipefail; ${line}; exit 0`], {
    encoding: 'utf8',
    cwd: folder,
  });
  expect(stdout.trim().split('\n')).toHaveLength(1);
  expect(stderr).toBe('');
});

const hasParallel = spawnSync('parallel', ['--version']).status === 0;

test.skipIf(!hasParallel)('under GNU parallel every name has its line (skipped where it is not installed)', () => {
  const line = `"${process.execPath}" "${BIN}" assess --stdin --workers 1 --placement heel`;
  const names = [...Array.from({ length: FILES }, (_, at) => `${at}.csv`), 'bad.csv'];
  const { stdout, status } = spawnSync('parallel', ['--pipe', '-N', '4', '-j', '2', '--keep-order', line], {
    encoding: 'utf8',
    cwd: folder,
    input: `${names.join('\n')}\n`,
  });
  expect(status).toBe(0);
  const found = stdout
    .trim()
    .split('\n')
    .map((text) => (JSON.parse(text) as { file: string }).file);
  expect(found).toEqual(names);
});

test('a zip is assessed as the folder that it was made of, and nothing is unpacked', async () => {
  const { zipped } = await import('@surae/exchange');
  const names = ['0.csv', '1.csv', 'bad.csv'];
  const bytes = (name: string) => new Uint8Array(readFileSync(join(folder, name)));
  writeFileSync(join(folder, 'study.zip'), zipped(names.map((name) => ({ name: `in/${name}`, bytes: bytes(name) }))));
  const before = readdirSync(folder);
  const { stdout, status } = surae('study.zip', '--placement', 'heel', '--json', '--workers', '2');
  expect(status).toBe(1);
  const lines = stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
  expect(lines.map((line) => [line['file'], line['status']])).toEqual([
    ['study.zip/in/0.csv', 'ok'],
    ['study.zip/in/1.csv', 'ok'],
    ['study.zip/in/bad.csv', 'refused'],
  ]);
  expect(readdirSync(folder)).toEqual(before);
  expect(statSync(join(folder, 'study.zip')).isFile()).toBe(true);
});
