import { describe, expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { MemoryIo } from '../support/memory-io.ts';

const messy = (name: string): string => `fixtures/messy/${name}`;

async function surae(
  args: readonly string[],
  memory = new MemoryIo(),
): Promise<{ code: number; memory: MemoryIo; out: string; error: string }> {
  const before = memory.out.length;
  memory.error = '';
  const code = await main(args, memory.io);
  return { code, memory, out: memory.out.slice(before), error: memory.error };
}

describe('surae look', () => {
  test('prints each guess with its evidence and confidence, the first rows, the trace, and what was found', async () => {
    const { code, out } = await surae(['look', messy('untidy.csv')]);
    expect(code).toBe(0);
    expect(out).toMatch(/decimals +\. \(0\.99\)/);
    expect(out).toMatch(/holds +heel-height \(0\.99\) +The name holds "heel"\. The unit is mm\./);
    expect(out).toMatch(/0\.02 +0\n/);
    expect(out).toMatch(/80 .*\u2874?/);
    expect(out).toContain('Values that are missing: 3 (lines 126-127, 309). Each is a gap, none becomes');
    expect(out).toContain('Nothing is asked.');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('a folder is looked through like that of surae assess; no recipe is made of several files', async () => {
    const memory = new MemoryIo();
    for (const name of ['s/b.csv', 's/a.txt', 's/c.pdf'])
      memory.files.set(name, 'time [s],force [N]\n0,700\n0.01,701\n');
    const { code, out, error } = await surae(['look', 's', '--json'], memory);
    expect(code).toBe(0);
    expect(
      out
        .trim()
        .split('\n')
        .map((line) => (JSON.parse(line) as { file: string }).file),
    ).toEqual(['s/a.txt', 's/b.csv']);
    expect(error).toBe('Passed over, no tables by their names: 1 .pdf.\n');
    const several = await surae(['look', 's', '--recipe-out', 'r.json'], memory);
    expect([several.code, several.memory.files.has('r.json')]).toEqual([2, false]);
  });

  test('a question says how it is answered, and no recipe is written before', async () => {
    const asked = await surae(['look', messy('two-plates.csv'), '--recipe-out', 'r.json']);
    expect(asked.code).toBe(1);
    expect(asked.out).toContain('--set "side:Fz [N] #2=..."  left, right'.replace('  ', ' '));
    expect(asked.error).toMatch(/expected answers to side:Fz \[N\] #2, side:Fz \[N\] #3/);
    expect(asked.memory.files.has('r.json')).toBe(false);
    const told = ['--set', 'side:Fz [N] #2=left', '--set', 'side:Fz [N] #3=right'];
    const done = await surae(
      ['look', messy('two-plates.csv'), ...told, '--recipe-out', 'r.json', '--name', 'Room 2'],
      asked.memory,
    );
    expect(done.code).toBe(0);
    expect(JSON.parse(done.memory.text('r.json'))).toMatchObject({ kind: 'surae-recipe', version: 1, name: 'Room 2' });
    const again = await surae(['look', messy('two-plates.csv'), ...told, '--recipe-out', 'r.json'], asked.memory);
    expect([again.code, again.error]).toEqual([2, expect.stringContaining('--replace replaces it')]);
  });

  test('as JSON what is not known is null, and a refusal is a line too', async () => {
    const { code, out, error } = await surae([
      'look',
      messy('sample-numbers.csv'),
      'fixtures/broken/picture.csv',
      'gone.csv',
      '--json',
    ]);
    expect(code).toBe(1);
    const [first, second, third] = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(first).toMatchObject({ status: 'ok', rows: 400, duration_s: null, rate_hz: { value: null, asked: true } });
    expect(second).toMatchObject({ status: 'refused', reason: expect.stringContaining('a PNG picture') as string });
    expect(third).toMatchObject({ status: 'refused', reason: 'gone.csv: there is no such file' });
    expect(error.split('\n').length).toBe(3);
  });

  test('an answer that cannot be followed refuses the file', async () => {
    const { code, error } = await surae(['look', messy('untidy.csv'), '--set', 'unit:heel height=furlong']);
    expect(code).toBe(1);
    expect(error).toMatch(/column "heel height": expected m, cm, mm/);
  });
});

describe('surae assess --recipe', () => {
  async function withRecipe(name: string, ...set: string[]): Promise<MemoryIo> {
    const told = set.flatMap((one) => ['--set', one]);
    const { code, memory, error } = await surae(['look', messy(name), ...told, '--recipe-out', 'r.json', '--json']);
    expect([code, error]).toEqual([0, '']);
    return memory;
  }
  const report = (out: string): Record<string, unknown> => JSON.parse(out) as Record<string, unknown>;

  test('the report of a messy file is that of the same numbers under our own header', async () => {
    const memory = await withRecipe('decimal-comma.csv');
    const text = new TextDecoder().decode(await memory.io.readFile(messy('decimal-comma.csv')));
    const ours = text.replace(/^.*\r\n/, 'time [s];heel_height [mm]\r\n').replace(/,/g, '.');
    memory.files.set('ours.csv', ours);
    const options = ['--side', 'left', '--json'];
    const byRecipe = report(
      (await surae(['assess', '--recipe', 'r.json', messy('decimal-comma.csv'), ...options], memory)).out,
    );
    const byHeader = report((await surae(['assess', 'ours.csv', '--placement', 'heel', ...options], memory)).out);
    expect(byRecipe['sha256']).not.toBe(byHeader['sha256']);
    for (const one of [byRecipe, byHeader]) for (const key of ['file', 'sha256']) delete one[key];
    expect(byRecipe).toEqual(byHeader);
    expect(JSON.stringify(byRecipe)).toContain('"attempted":3');
  });

  test('of a file with both legs one has to be named, and a file of another kind is refused with what differs', async () => {
    const memory = await withRecipe('left-right.csv');
    const args = ['assess', '--recipe', 'r.json', messy('left-right.csv'), '--json'];
    const unnamed = await surae(args, memory);
    expect([unnamed.code, unnamed.error]).toEqual([
      1,
      expect.stringContaining('holds both legs: say which with --side'),
    ]);
    const left = await surae([...args, '--side', 'left'], memory);
    expect(left.code).toBe(0);
    expect(left.out).toContain('"side":"left"');
    const other = await surae(['assess', '--recipe', 'r.json', messy('untidy.csv'), '--json'], memory);
    expect(other.error).toMatch(/untidy\.csv: expected a file like those of the recipe/);
  });

  test('a rate that nobody knows, people who are not told apart and a missing recipe stop it', async () => {
    const memory = await withRecipe('sample-numbers.csv');
    const args = ['assess', '--recipe', 'r.json', messy('sample-numbers.csv'), '--side', 'left', '--json'];
    expect((await surae(args, memory)).error).toMatch(/expected the number of samples a second/);
    expect((await surae([...args, '--rate-hz', '50'], memory)).out).toContain('"attempted":3');
    const people = await withRecipe('two-people-column.csv');
    const both = ['assess', '--recipe', 'r.json', messy('two-people-column.csv'), '--side', 'left', '--json'];
    expect((await surae(both, people)).error).toMatch(/row 402: expected one part.*2 parts/);
    expect((await surae([...both, '--part', 'P08'], people)).out).toContain('"attempted":3');
    const gone = await surae(['assess', '--recipe', 'gone.json', GOOD]);
    expect([gone.code, gone.error]).toEqual([2, expect.stringContaining('gone.json cannot be read')]);
    const memory2 = new MemoryIo();
    memory2.files.set('bad.json', '{"kind":"surae-recipe","version":1}');
    expect((await surae(['assess', '--recipe', 'bad.json', GOOD], memory2)).error).toMatch(/bad\.json, name: expected/);
  });
});

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';
