import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { WorkerEnd } from '../../apps/cli/src/pool.ts';
import { MemoryIo } from '../support/memory-io.ts';

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';

async function surae(input: string, ...args: string[]) {
  const memory = new MemoryIo();
  memory.typedIn = input;
  const { startPool } = memory.io;
  const code = await main(['assess', '--stdin', ...args], {
    ...memory.io,
    startPool: async (plan, size) => {
      const pool = await startPool(plan, size);
      const run: typeof pool.run = (job) =>
        job.item.file === 'deadly.csv' ? Promise.reject(new WorkerEnd('its worker ended: code 7')) : pool.run(job);
      return { ...pool, workers: 3, run };
    },
  });
  const lines = memory.out.split('\n').slice(0, -1);
  return { code, memory, lines: lines.map((line) => JSON.parse(line) as Record<string, unknown>) };
}

test('for every line one line of JSON in its order, that of surae assess --json; a refusal is an answer', async () => {
  const { code, lines, memory } = await surae(`gone.csv\n${GOOD}\ndeadly.csv\n\n${GOOD}`, '--placement', 'heel');
  expect(code).toBe(0);
  expect(memory.error).toBe('');
  expect(lines.map(({ file, status }) => [file, status])).toEqual([
    ['gone.csv', 'refused'],
    [GOOD, 'ok'],
    ['deadly.csv', 'refused'],
    [GOOD, 'ok'],
  ]);
  expect(lines[2]['reason']).toBe('deadly.csv: its worker ended: code 7');
  const direct = new MemoryIo();
  await main(['assess', GOOD, '--placement', 'heel', '--json'], direct.io);
  expect(lines[1]).toEqual(JSON.parse(direct.out));
});

test('rows of a manifest hand on what they hold', async () => {
  const { lines } = await surae(`file,person,side,placement\n${GOOD},P1,left,heel\n${GOOD},P2,up,heel\n`);
  expect(lines).toMatchObject([
    { file: GOOD, person: 'P1', side: 'left', status: 'ok' },
    { file: GOOD, status: 'refused' },
  ]);
});

test('columns that are no manifest, and options that say nothing here, are mistakes of the command line', async () => {
  const wrong = await surae('name,side\na.csv,left\n', '--lines', 'csv');
  expect([wrong.code, wrong.lines]).toEqual([2, []]);
  expect(wrong.memory.error).toContain('column "file"');
  for (const args of [['--csv', 'out'], ['--journal', 'j'], ['a.csv'], ['--lines', 'xml']]) {
    expect((await surae('', ...args)).code, args.join(' ')).toBe(2);
  }
});
