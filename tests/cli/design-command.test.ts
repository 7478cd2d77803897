import { DESIGN_QUESTIONS } from '@surae/study';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { MemoryIo } from '../support/memory-io.ts';

async function asked(...args: string[]): Promise<MemoryIo & { code: number }> {
  const memory = new MemoryIo();
  const code = await main(['design', ...args], memory.io);
  return Object.assign(memory, { code });
}

test('says how many, how far it moves, by what it was worked out, and the command that says it again', async () => {
  const { out, code } = await asked('groups', '--difference', '3', '--sd', '4,5,7', '--drop-out', '0.1');
  expect(code).toBe(0);
  expect(out).toContain('45 in each group, 100 to begin with');
  expect(out).toMatch(/at worst +87 in each group/);
  expect(out).toContain('noncentral t');
  expect(out).toContain(
    'surae design groups --difference=3 --sd=4,5,7 --legs=1 --legs-alike=1 --power=0.8 --level=0.95 --drop-out=0.1 --out OUT',
  );
});

test('the command in the record makes the same bytes again', async () => {
  const memory = await asked('paired', '--difference=-3', '--sem', '2.25', '--sem-people', '32', '--out', 'o');
  const of = (folder: string): [string, string][] =>
    [...memory.files]
      .filter(([path]) => path.startsWith(`${folder}/`))
      .map(([path, text]) => [path.slice(folder.length + 1), text as string]);
  expect(of('o')).toHaveLength(8);
  const { command } = JSON.parse(memory.text('o/reproduce.json')) as { command: string };
  expect(await main(command.replace('OUT', 'again').split(' ').slice(1), memory.io)).toBe(0);
  expect(of('again')).toEqual(of('o'));
});

test('as JSON it is one line with every case', async () => {
  const { out } = await asked('icc', '--icc', '0.7,0.85,0.9', '--width', '0.2', '--json');
  const told = JSON.parse(out) as Record<string, { count: number }>;
  expect(out.trim().split('\n')).toHaveLength(1);
  expect([told['expected'].count, told['by_formula']]).toEqual([34, 35]);
  expect(told['most'].count).toBeGreaterThan(34);
});

test.each([
  [[], 'name what the study wants to know: groups'],
  [['many'], 'surae design many: expected groups'],
  [['groups', 'paired'], 'name one question: "paired" came after "groups"'],
  [['groups', '--difference', '3'], '--sd: This is needed'],
  [['groups', '--difference', '0', '--sd', '4'], '--difference: A difference of 0 is never found'],
  [['groups', '--difference', '3', '--sd', '4,x'], '--sd 4,x: expected a number, or lowest,expected,highest'],
  [['groups', '--difference', '3', '--sd-people', '4'], '--sd-people says something only with --sd'],
  [['groups', '--difference', '3', '--sd', '4', '--icc', '0.5'], '--icc says nothing here'],
  [['groups', '--sideways'], "Unknown option '--sideways'"],
])('%j cannot be followed, and says why', async (args, why) => {
  const { error, out, code } = await asked(...args);
  expect([code, out]).toEqual([2, '']);
  expect(error).toContain(why);
});

test('files that are there are replaced only when that is asked', async () => {
  const memory = await asked('error', '--above', '0.3', '--out', 'o');
  const again = ['design', 'error', '--above', '0.3', '--out', 'o'];
  expect(await main(again, memory.io)).toBe(2);
  expect(memory.error).toContain('is there already');
  expect(await main([...again, '--replace'], memory.io)).toBe(0);
});

test('the help names every question and every input, in lines that fit', async () => {
  const { out } = await asked('--help');
  for (const { id, inputs } of DESIGN_QUESTIONS) {
    expect(out).toContain(`  ${id} `);
    for (const { key } of inputs) expect(out).toContain(`--${key} N`);
  }
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThan(80);
  const memory = new MemoryIo();
  expect(await main(['help', 'design'], memory.io)).toBe(0);
  expect(memory.out).toBe(out);
});
