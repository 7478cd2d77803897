import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';

const BIN = 'apps/cli/bin/surae.js';
const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';

function surae(...args: string[]) {
  if (!existsSync('apps/cli/dist/main.js')) throw new Error('the command is not built: npm run build');
  return spawnSync(process.execPath, [BIN, ...args], { encoding: 'utf8', env: { ...process.env, LANG: 'C.UTF-8' } });
}

test('the built command assesses a file and leaves it as it was', () => {
  const before = readFileSync(GOOD);
  const { status, stdout, stderr } = surae('assess', GOOD);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toMatch(/attempted +3/);
  expect(stdout).not.toContain('\u001b');
  expect(readFileSync(GOOD).equals(before)).toBe(true);
});

test('every setting of V8 that workers run with is one that this Node knows', () => {
  // what V8 does not know it says on standard error, and goes on
  expect(surae('assess', GOOD, GOOD, '--workers', '2').stderr).not.toMatch(/flag|option/i);
});

test('its exit code and standard error tell what was refused', () => {
  const { status, stdout, stderr } = surae('assess', 'fixtures/broken/ragged-row.csv', GOOD, '--json');
  expect(status).toBe(1);
  expect(stdout.trim().split('\n')).toHaveLength(2);
  expect(stderr).toContain('fixtures/broken/ragged-row.csv, row 122');
  expect(surae('assess').status).toBe(2);
});

test('simulated recordings go through a manifest into tables', () => {
  const folder = mkdtempSync(join(tmpdir(), 'surae-test-'));
  try {
    expect(surae('simulate', '--placement', 'heel', '--level', 'clean', '--count', '2', '--out', folder).status).toBe(
      0,
    );
    const results = join(folder, 'results');
    const { status, stdout } = surae('assess', '--manifest', join(folder, 'manifest.csv'), '--csv', results);
    expect(status).toBe(0);
    expect(stdout).toContain('sets.csv: 2 rows');
    const truth = readFileSync(join(folder, 'truth.csv'), 'utf8').split('\r\n').length;
    expect(readFileSync(join(results, 'repetitions.csv'), 'utf8').split('\r\n')).toHaveLength(truth);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('the built command gives the published limits of agreement, and refuses a table with its place', () => {
  const { status, stdout, stderr } = surae('agree', 'fixtures/agreement/bland-altman-1986-meters.csv', '--reach', '2');
  expect([status, stderr]).toEqual([0, '']);
  // Bland & Altman (1986): -2.1 (-22.0 to 17.8)
  expect(stdout).toMatch(/bias +−2\.1 \(−22\.0 to 17\.8\) l\/min/);
  const refused = surae('agree', 'fixtures/broken/ragged-row.csv');
  expect(refused.status).toBe(1);
  expect(refused.stderr).toContain('fixtures/broken/ragged-row.csv, row');
});

const PACKED = 'apps/cli/dist/packed/main.js';

test.skipIf(!existsSync(PACKED))(
  'packed into few files it says what it says as compiled (npm run build packs it)',
  () => {
    const said = (module: string) => {
      const code = `const { main } = await import(${JSON.stringify(pathToFileURL(module).href)});
      process.exitCode = await main(['assess', ${JSON.stringify(GOOD)}, '--json']);`;
      return spawnSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' });
    };
    const [packed, compiled] = [PACKED, 'apps/cli/dist/main.js'].map(said);
    expect([packed.status, packed.stdout, packed.stderr]).toEqual([compiled.status, compiled.stdout, compiled.stderr]);
    expect(packed.stdout.split('\n')).toHaveLength(2);
  },
);
