import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import '../support/close.ts';
import { MemoryIo } from '../support/memory-io.ts';

async function run(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const memory = new MemoryIo();
  for (const [path, text] of Object.entries(files)) memory.files.set(path, text);
  return { code: await main(['agree', ...args], memory.io), memory };
}

const METERS = 'fixtures/agreement/bland-altman-1986-meters.csv';
const JUDGES = 'fixtures/agreement/shrout-fleiss-1979.csv';

test('a table is read and judged, and its open data give the published figures', async () => {
  const { code, memory } = await run(['fixtures/agreement/isometric-two-days/between-days.csv', '--json']);
  expect([code, memory.error]).toEqual([0, '']);
  const { groups } = JSON.parse(memory.out) as {
    groups: { icc: { form: string; value: number; low: number; high: number }[] }[];
  };
  const { value, low, high } = groups[0].icc.find(({ form }) => form === 'ICC(2,k)')!;
  // Sensors 2020, 20(17):4999 prints four decimals: 0.9582 (0.9297 to 0.9752)
  expect([value, low, high]).toBeCloseToEach([0.9582, 0.9297, 0.9752], { rtol: 0, atol: 6e-5 });
});

test('a picture is written once, and again only when asked', async () => {
  const { code, memory } = await run([METERS, '--picture', 'p.svg']);
  expect(code).toBe(0);
  expect(memory.text('p.svg')).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  expect(await main(['agree', METERS, '--picture', 'p.svg'], memory.io)).toBe(2);
  expect(memory.error).toContain('p.svg is there already');
  expect(await main(['agree', METERS, '--picture', 'p.svg', '--replace'], memory.io)).toBe(0);
});

test('of several raters the picture shows the pair that is named', async () => {
  const { code, memory } = await run([JUDGES, '--picture', 'p.svg']);
  expect(code).toBe(2);
  expect(memory.error).toContain('choose with --pair judge 1,judge 2 or judge 1,judge 3');
  const named = await run([JUDGES, '--picture', 'p.svg', '--pair', 'judge 2,judge 4']);
  expect(named.memory.text('p.svg')).toContain('judge 2 minus judge 4');
  expect((await run([JUDGES, '--picture', 'p.svg', '--pair', 'judge 9,judge 4'])).code).toBe(2);
});

test('a refused table ends with 1 and says where; a command line that does not fit ends with 2', async () => {
  const table = 'subject,A [mm],B [mm]\nP1,1,2\nP1,3,4\n';
  const { code, memory } = await run(['t.csv'], { 't.csv': table });
  expect([code, memory.out]).toEqual([1, '']);
  expect(memory.error).toContain(
    't.csv, row 3: expected one value of each subject and rater, got "P1", "A" again, as in row 2',
  );
  expect((await run(['gone.csv'])).code).toBe(2);
  const words = { 'w.csv': 'subject,A [verdict],B [verdict]\n1,yes,no\n2,no,no\n' };
  expect((await run(['w.csv', '--picture', 'p.svg'], words)).memory.error).toContain('--picture needs numbers');
});

test('a study is planned with a table and without', async () => {
  const alone = await run(['--icc-width', '0.1', '--icc-expected', '0.9']);
  expect([alone.code, alone.memory.error]).toEqual([0, '']);
  expect(alone.memory.out).toMatch(/2 tests each: \d+/);
  const together = await run([METERS, '--icc-width', '0.1', '--json']);
  expect(JSON.parse(together.memory.out)).toMatchObject({ plans: [{ wish: 'icc_width', icc_expected: 0.946014725 }] });
});

test('every worked example of the fixtures is taken', async () => {
  const names = [
    'weir-2005-a',
    'weir-2005-b',
    'bland-altman-1986-large-twice',
    'bland-altman-1986-mini-twice',
    'cohen-three-words',
  ];
  for (const name of names) expect((await run([`fixtures/agreement/${name}.csv`])).code, name).toBe(0);
  const days = await run(['fixtures/agreement/hopkins-2000.csv']);
  expect(days.memory.out).toMatch(/standard error +2\.89 /);
  expect(days.memory.out).toMatch(/variation, by logs +4\.1 /);
});
