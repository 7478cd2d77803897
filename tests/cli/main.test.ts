import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { MemoryIo } from '../support/memory-io.ts';

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';
const BROKEN = readdirSync('fixtures/broken').map((name) => `fixtures/broken/${name}`);

interface Line {
  readonly file: string;
  readonly status: string;
  readonly reason?: string;
  readonly sha256: string | null;
  readonly placement: string | null;
  readonly count?: { readonly attempted: number };
}

async function run(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const memory = new MemoryIo();
  for (const [path, text] of Object.entries(files)) memory.files.set(path, text);
  const code = await main(args, memory.io);
  const lines = (): Line[] =>
    memory.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Line);
  return { code, memory, lines };
}

test('three raises of the fixture are counted', async () => {
  const { code, lines, memory } = await run(['assess', GOOD, '--json']);
  expect(memory.error).toBe('');
  expect(code).toBe(0);
  expect(lines()).toMatchObject([{ status: 'ok', placement: 'heel', count: { attempted: 3 } }]);
});

test('twenty broken files give twenty refusals that name their file, and the good one among them is assessed', async () => {
  expect(BROKEN).toHaveLength(20);
  const files = [...BROKEN.slice(0, 10), GOOD, ...BROKEN.slice(10)];
  const { code, lines, memory } = await run(['assess', ...files, '--json']);
  expect(code).toBe(1);
  expect(lines().map((line) => line.file)).toEqual(files);
  expect(
    lines()
      .filter((line) => line.status === 'ok')
      .map((line) => line.file),
  ).toEqual([GOOD]);
  for (const line of lines().filter((one) => one.status === 'refused')) {
    expect(line.reason).toContain(line.file);
    expect(line.reason).not.toContain('internal');
    expect(memory.error).toContain(line.reason);
  }
});

test('the hash is of the untouched bytes, for a refused file as well', async () => {
  const { lines } = await run(['assess', GOOD, BROKEN[0] ?? '', '--json']);
  const hashes = [GOOD, BROKEN[0] ?? ''].map((file) => createHash('sha256').update(readFileSync(file)).digest('hex'));
  expect(lines().map((line) => line.sha256)).toEqual(hashes);
});

test('a missing file and a folder are refused, each with its reason', async () => {
  const { code, memory } = await run(['assess', 'no-such.csv', 'fixtures', GOOD]);
  expect(code).toBe(1);
  expect(memory.error).toContain('Refused, 2 of 3:');
  expect(memory.error).toContain('no-such.csv: there is no such file');
  expect(memory.error).toContain('fixtures: this is a folder');
  expect(memory.out).toContain('refused');
});

test('an accelerometer without a placement is asked about, never guessed', async () => {
  const { code, lines } = await run(['assess', 'fixtures/recordings/walking-foot/left-imu.csv', '--json']);
  expect(code).toBe(1);
  expect(lines()[0]?.reason).toContain('--placement');
});

test('a placement that the columns cannot serve is refused', async () => {
  const { code, lines } = await run(['assess', GOOD, '--placement', 'platform', '--json']);
  expect(code).toBe(1);
  expect(lines()[0]?.reason).toMatch(/force/);
});

test('torque alone holds no heel raise', async () => {
  const { lines } = await run(['assess', 'fixtures/recordings/ankle-torque/passive.csv', '--json']);
  expect(lines()[0]?.reason).toContain('no heel raise can be found in torque, angle');
});

test('a manifest is followed in its order; its bad rows are refused alone', async () => {
  const manifest = [
    'file,person,side,placement,test',
    'heel-three-raises.csv,P1,left,,',
    'heel-three-raises.csv,P2,left,,hop',
    'gone.csv,P3,right,heel,',
    'heel-three-raises.csv,P4,right,heel,heel-raise',
  ].join('\n');
  const path = 'fixtures/recordings/made/list.csv';
  const { code, lines } = await run(['assess', '--manifest', path, '--json'], { [path]: manifest });
  expect(code).toBe(1);
  const persons = lines().map((line) => (line as unknown as { person: string }).person);
  expect(persons).toEqual(['P1', undefined, 'P3', 'P4', 'P1', 'P4']);
  expect(lines().map((line) => line.status)).toEqual(['ok', 'refused', 'refused', 'ok', undefined, undefined]);
  expect(lines().slice(4)).toMatchObject([{ comparison: 'legs', kind: 'blocked' }, { comparison: 'legs' }]);
});

test('a manifest that is not there is a fault of the command line', async () => {
  const { code, memory } = await run(['assess', '--manifest', 'no-such.csv']);
  expect(code).toBe(2);
  expect(memory.error).toContain('no-such.csv cannot be read');
});

test('settings change the result and its hash; a name that is none is refused before anything is read', async () => {
  const hashOf = async (text: string | undefined): Promise<unknown> => {
    const options = text === undefined ? [] : ['--settings', 's.json'];
    const { lines, memory } = await run(
      ['assess', GOOD, '--json', ...options],
      text === undefined ? {} : { 's.json': text },
    );
    expect(memory.error).toBe('');
    return (lines()[0] as unknown as { settings_hash: string }).settings_hash;
  };
  const usual = await hashOf(undefined);
  expect(await hashOf('{}')).toBe(usual);
  expect(await hashOf('{"protocol": {"heightFraction": 0.6}}')).not.toBe(usual);
  for (const text of ['{"judgment": {}}', '{"protocol": {"heightFraction": "high"}}', 'not json', '[]']) {
    const { code, memory } = await run(['assess', GOOD, '--settings', 's.json'], { 's.json': text });
    expect(code).toBe(2);
    expect(memory.error).toContain('s.json');
    expect(memory.out).toBe('');
  }
});

test('an unknown protocol refuses the recording and names those that there are', async () => {
  const { code, memory } = await run(['assess', GOOD, '--protocol', 'handstand']);
  expect(code).toBe(1);
  expect(memory.error).toContain('single-leg.floor');
});

test('the same recording gives the same output twice', async () => {
  const [first, second] = [await run(['assess', GOOD, '--json']), await run(['assess', GOOD, '--json'])];
  expect(first.memory.out).toBe(second.memory.out);
});

test('help, version and a command line that cannot be followed', async () => {
  expect((await run(['--help'])).memory.out).toContain('surae assess FILE...');
  expect((await run(['assess', '--help'])).memory.out).toContain('Examples');
  expect((await run(['--version'])).memory.out).toMatch(/^surae \d+\.\d+\.\d+\n$/);
  const { code, memory } = await run(['assess']);
  expect(code).toBe(2);
  expect(memory.error).toMatch(/^surae: name at least one FILE/);
  expect(memory.out).toBe('');
});

test('no line of help is wider than a terminal', async () => {
  for (const args of [['--help'], ['assess', '--help'], ['simulate', '--help']]) {
    const { memory } = await run(args);
    expect(memory.out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  }
});

test('help and a mistyped option answer before anything but data is loaded', () => {
  const seen = new Set<string>();
  const loaded = new Set<string>();
  const follow = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    const text = readFileSync(path, 'utf8');
    for (const [, from] of text.matchAll(/^(?:(?:import|export) (?!type\b)|\} )[^;]*from '([^']+)'/gm)) {
      if (from.startsWith('.')) follow(join(dirname(path), from));
      else if (from === '@surae/study/words') follow('packages/study/src/words.ts');
      else loaded.add(from);
    }
  };
  follow('apps/cli/src/main.ts');
  expect(seen).toContain('packages/study/src/listed/size-ranges.ts');
  // the units and distributions that a command needs take a second to load
  expect([...loaded].filter((from) => !from.startsWith('node:')).sort()).toEqual(['@surae/shared']);
});
