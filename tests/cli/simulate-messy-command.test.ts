import { parseStudy } from '@surae/study';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import { MemoryIo } from '../support/memory-io.ts';

async function messy(...args: string[]): Promise<MemoryIo> {
  const memory = new MemoryIo();
  expect(await main(['simulate', '--messy', '--people', '4', '--out', 'm', ...args], memory.io)).toBe(0);
  return memory;
}

const bytesOf = (memory: MemoryIo, name: string): Buffer => Buffer.from(memory.files.get(`m/${name}`)!);

test('the same seed makes the same folder, another seed another one', async () => {
  const [one, again, other] = [await messy(), await messy(), await messy('--seed', '2')];
  expect([...one.files.keys()].sort()).toEqual([...again.files.keys()].sort());
  const same = (name: string): boolean =>
    Buffer.compare(Buffer.from(one.files.get(name)!), Buffer.from(again.files.get(name)!)) === 0;
  expect([...one.files.keys()].filter((name) => !same(name))).toEqual([]);
  expect(one.text('m/truth.csv')).not.toBe(other.text('m/truth.csv'));
});

test('people come twice, and each assistant writes in a way of their own', async () => {
  const memory = await messy();
  const truth = csvRows(memory.text('m/truth.csv'));
  expect(truth.map((row) => `${row['person']} ${row['visit']} ${row['side']}`)).toEqual([
    ...['P01 1 left', 'P01 2 left', 'P02 1 right', 'P02 2 right', 'P03 1 left', 'P03 2 left', 'P04 1 right'],
    'P04 2 right',
  ]);
  expect(bytesOf(memory, 'traces/room-1/P01_1_L.csv').subarray(0, 3).toString('hex')).toBe('efbbbf');
  expect(bytesOf(memory, 'traces/room-1/P01_1_L.csv').toString()).toMatch(
    /^.Zeit \[s\];Ferse \[cm\]\r\n0,\d{4};-?\d+,\d{4}\r\n/,
  );
  expect(bytesOf(memory, 'traces/room-2/right-1-P02.txt').toString()).toMatch(
    /^Recorder 3\n(.*\n){3}\d+\.\d\t-?\d+\.\d{3}\n/s,
  );
  const wide = bytesOf(memory, 'traces/ward/P03 v1 left.csv');
  expect(wide.subarray(0, 2).toString('hex')).toBe('fffe');
  expect(wide.toString('utf16le')).toMatch(/^."t","h"\r\n"s","m"\r\n\d/);
  const people = csvRows(memory.text('m/people.csv'));
  expect(people.map((row) => row['person'])).toEqual(['P01', 'P02', 'P03', 'P04']);
});

test('the study that lies beside them is one that is followed', async () => {
  const memory = await messy('--seed', '7');
  const { study } = parseStudy(memory.text('m/study.json'), 'study.json');
  expect(study.comparison.of).toBe('visits');
});

test('nothing is written over unless it is asked for', async () => {
  const memory = await messy();
  const again = ['simulate', '--messy', '--people', '4', '--seed', '3', '--out', 'm'];
  const before = memory.text('m/truth.csv');
  expect(await main(again, memory.io)).toBe(2);
  expect(memory.error).toContain('is there already');
  expect(memory.text('m/truth.csv')).toBe(before);
  expect(await main([...again, '--replace'], memory.io)).toBe(0);
  expect(memory.text('m/truth.csv')).not.toBe(before);
});

test.each([
  [['--messy', '--placement', 'foot'], '--placement says nothing with --messy'],
  [['--messy', '--count', '3'], '--count says nothing with --messy'],
  [['--people', '3'], '--people says something only with --messy'],
  [['--messy', '--people', '1'], '--people 1'],
])('%j cannot be followed', async (args, words) => {
  const memory = new MemoryIo();
  expect(await main(['simulate', '--out', 'm', ...args], memory.io)).toBe(2);
  expect(memory.error).toContain(words);
});
