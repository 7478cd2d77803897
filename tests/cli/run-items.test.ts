import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AssessArguments } from '../../apps/cli/src/assess-arguments.ts';
import { assessCommand } from '../../apps/cli/src/assess-command.ts';
import type { Io } from '../../apps/cli/src/io.ts';
import { WorkerEnd } from '../../apps/cli/src/pool.ts';
import { csvRows } from '../support/csv-rows.ts';
import { handMadeRefusal } from '../support/hand-made-outcome.ts';
import { MemoryIo } from '../support/memory-io.ts';

const ASKED: AssessArguments = {
  command: 'assess',
  files: [],
  manifest: undefined,
  lines: undefined,
  given: handMadeRefusal().item.about,
  settings: undefined,
  reliability: undefined,
  vary: undefined,
  recipe: undefined,
  output: { kind: 'text' },
  workers: undefined,
  memoryMb: undefined,
  journal: undefined,
};

const TABLES = { kind: 'tables', csv: 'out', parquet: 'out', replace: true } as const;
const short = (rows: number) =>
  ['time [s],heel_height [mm]', ...Array.from({ length: rows }, (_, at) => `${at / 50},${at % 3}`), ''].join('\n');
const MANIFEST = [
  'file,person,visit,side,placement',
  ...['a', 'b', 'c', 'a'].map((name, at) => `${name}.csv,P1,${1 + (at >> 1)},${at % 2 === 0 ? 'left' : 'right'},heel`),
  'gone.csv,P1,3,left,heel',
  'odd.csv,P1,3,up,heel',
];
const CHANGES = { files: [], manifest: 'm.csv', output: TABLES, journal: 'out.journal' };

function disk(logs?: MemoryIo['logs']): MemoryIo {
  const memory = new MemoryIo();
  for (const [at, name] of ['a', 'b', 'c'].entries()) memory.files.set(`${name}.csv`, short(200 + 10 * at));
  memory.files.set('m.csv', MANIFEST.join('\n'));
  for (const [name, log] of logs ?? []) memory.logs.set(name, log);
  return memory;
}

function written({ files }: MemoryIo): Record<string, string> {
  const texts = [...files].map(([name, content]) => [name, Buffer.from(content).toString('latin1')]);
  return Object.fromEntries(texts.filter(([name]) => name.startsWith('out/'))) as Record<string, string>;
}

async function go(memory: MemoryIo, changes: Partial<AssessArguments> = {}, io: Partial<Io> = {}) {
  return assessCommand({ ...ASKED, ...CHANGES, ...changes }, { ...memory.io, ...io });
}

test('a second run with nothing to do says so, makes nothing and writes the same bytes', async () => {
  const first = disk();
  expect(await go(first)).toBe(1);
  expect(first.assessed).toBe(6);
  expect(Object.keys(written(first))).toContain('out/sets.parquet');
  const second = disk(first.logs);
  expect(await go(second)).toBe(1);
  expect(written(second)).toEqual(written(first));
  // the missing file and the row that cannot be followed are tried again: nothing says that they are as they were
  expect(second.assessed).toBe(2);
  expect(second.error).toContain('4 of 6 results are from out.journal.');
  second.files.set('m.csv', MANIFEST.slice(0, 5).join('\n'));
  second.error = '';
  expect(await go(second)).toBe(0);
  expect(second.error).toBe('Nothing was left to do: all 4 results are from out.journal.\n');
});

test('other bytes, another row, another setting or another output make a result anew, and the old ones stay', async () => {
  const first = disk();
  await go(first);
  const length = first.logs.get('out.journal')!.length;
  const changed = async (change: (memory: MemoryIo) => void, changes: Partial<AssessArguments> = {}) => {
    const memory = disk(first.logs);
    change(memory);
    await go(memory, changes);
    expect(memory.logs.get('out.journal')!.bytes.subarray(0, length).equals(first.logs.get('out.journal')!.bytes)).toBe(
      true,
    );
    return memory.assessed - 2;
  };
  expect(await changed(() => undefined)).toBe(0);
  expect(await changed(({ files }) => files.set('b.csv', short(500)))).toBe(1);
  expect(await changed(({ files }) => files.set('m.csv', MANIFEST.join('\n').replace('c.csv,P1', 'c.csv,P2')))).toBe(1);
  expect(await changed(({ files }) => files.set('s.json', '{}'), { settings: 's.json' })).toBe(4);
  expect(await changed(() => undefined, { vary: { parameter: 'heightFraction', values: ['0.6', '0.7'] } })).toBe(4);
  expect(await changed(() => undefined, { output: { kind: 'json' } })).toBe(4);
});

test('stopped after any number it leaves no table, says how to go on, and comes to the same bytes', async () => {
  const whole = disk();
  await go(whole);
  for (const after of [0, 1, 3]) {
    const stopped = disk();
    const { startPool } = stopped.io;
    const code = await go(
      stopped,
      {},
      {
        startPool: async (plan, size) => {
          const pool = await startPool(plan, size);
          let done = 0;
          const run: typeof pool.run = async (job) => {
            if (done === after) {
              for (const stop of stopped.stops) stop(2);
              throw new Error('abandoned');
            }
            done += 1;
            return pool.run(job);
          };
          return { ...pool, run };
        },
      },
    );
    expect(code).toBe(130);
    expect(written(stopped)).toEqual({});
    expect(stopped.error).toBe(
      `Stopped, ${after} of 6 done: their results are in out.journal, and the same command goes on from there.\n`,
    );
    expect(stopped.stops.size).toBe(0);
    const again = disk(stopped.logs);
    expect(await go(again)).toBe(1);
    expect(written(again)).toEqual(written(whole));
    expect(again.assessed).toBe(6 - after);
  }
  const unkept = disk();
  const { startPool } = unkept.io;
  await go(
    unkept,
    { journal: undefined },
    {
      startPool: async (plan, size) => ({
        ...(await startPool(plan, size)),
        run: () => {
          for (const stop of unkept.stops) stop(15);
          return Promise.reject(new Error('abandoned'));
        },
      }),
    },
  );
  expect(unkept.error).toContain('nothing is kept, since no journal was');
});

test.each(['json', 'text', 'tables'] as const)(
  'as %s the bytes are the same whatever the number at once and the order in which they are done',
  async (kind) => {
    const output = kind === 'tables' ? TABLES : { kind };
    const plain = disk();
    await go(plain, { output, journal: undefined });
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 3 }), fc.infiniteStream(fc.nat(4)), async (workers, waits) => {
        const memory = disk();
        const { startPool } = memory.io;
        await go(
          memory,
          { output, journal: undefined },
          {
            startPool: async (plan, size) => {
              const pool = await startPool(plan, size);
              const run: typeof pool.run = async (job) => {
                const answer = await pool.run(job);
                for (let left = waits.next().value as number; left > 0; left -= 1) await new Promise(setImmediate);
                return answer;
              };
              return { ...pool, workers, run };
            },
          },
        );
        expect(memory.out).toBe(plain.out);
        expect(written(memory)).toEqual(written(plain));
      }),
      { numRuns: 12 },
    );
  },
);

test('a worker that ends refuses its recording alone, and the next run tries it again', async () => {
  const memory = disk();
  const { startPool } = memory.io;
  await go(
    memory,
    {},
    {
      startPool: async (plan, size) => {
        const pool = await startPool(plan, size);
        const run: typeof pool.run = (job) =>
          job.item.file === 'b.csv' ? Promise.reject(new WorkerEnd('its worker ended: code 7')) : pool.run(job);
        return { ...pool, run };
      },
    },
  );
  expect(csvRows(memory.text('out/refused.csv')).map((row) => [row['file'], row['reason']])).toContainEqual([
    'b.csv',
    'b.csv: its worker ended: code 7',
  ]);
  expect(csvRows(memory.text('out/sets.csv')).map((row) => row['file'])).toEqual(['a.csv', 'c.csv', 'a.csv']);
  const again = disk(memory.logs);
  await go(again);
  expect(csvRows(again.text('out/sets.csv')).map((row) => row['file'])).toContain('b.csv');
});

test('of very many refusals the first are listed and the table is named', async () => {
  const files = Array.from({ length: 25 }, (_, at) => `gone-${at}.csv`);
  const memory = new MemoryIo();
  await go(memory, { files, manifest: undefined });
  expect(memory.error.split('\n')).toHaveLength(23);
  expect(memory.error).toContain('  and 5 more, all in out/refused.csv\n');
});

test('a folder is assessed in its order, and what is passed over is said', async () => {
  const memory = new MemoryIo();
  for (const name of ['s/b.csv', 's/A/x.csv', 's/a.pdf']) memory.files.set(name, short(200));
  await go(memory, { files: ['s'], manifest: undefined, given: { ...ASKED.given, placement: 'heel' } });
  expect(csvRows(memory.text('out/sets.csv')).map((row) => row['file'])).toEqual(['s/A/x.csv', 's/b.csv']);
  expect(memory.error).toBe('Passed over, no tables by their names: 1 .pdf.\n');
});
