import { readRecording } from '@surae/records';
import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import { MemoryIo } from '../support/memory-io.ts';

async function simulate(...args: string[]): Promise<MemoryIo> {
  const memory = new MemoryIo();
  expect(await main(['simulate', '--out', 'sets', ...args], memory.io)).toBe(0);
  return memory;
}

test.each([
  ['heel', ['heel-height'], 1e-7],
  ['platform', ['force'], 1e-3],
  ['trunk', ['acceleration', 'acceleration', 'acceleration'], 1e-5],
] as const)('a recording of the %s reads back as it was simulated', async (placement, quantities, atol) => {
  const memory = await simulate('--placement', placement, '--level', 'clean', '--seed', '3');
  const bytes = new TextEncoder().encode(memory.text(`sets/${placement}-clean-3.csv`));
  const [read] = readRecording(bytes).groups;
  const [made] = simulateSet({ placement, level: 'clean', seed: 3 }).trace.groups;
  expect(read?.channels.map((channel) => channel.quantity).slice(0, quantities.length)).toEqual(quantities);
  made?.channels.forEach((channel, index) => {
    const samples = read?.channels[index]?.samples ?? new Float64Array();
    expect(samples).toHaveLength(channel.samples.length);
    channel.samples.forEach((sample, at) => {
      if (Math.abs(sample - samples[at]) > atol) expect(samples[at]).toBe(sample);
    });
  });
});

test('the truth has one row for each true repetition, in millimetres', async () => {
  const memory = await simulate('--placement', 'heel', '--seed', '5', '--count', '2');
  const truth = csvRows(memory.text('sets/truth.csv'));
  const sets = [5, 6].map((seed) => simulateSet({ placement: 'heel', level: 'typical', seed }).truth.repetitions);
  expect(truth).toHaveLength(sets.flat().length);
  expect(Number(truth[0]?.['heel_height_mm'])).toBeCloseTo((sets[0]?.[0]?.heelHeightM ?? 0) * 1000, 1);
});

test('a foot sensor without gyroscope has no gyroscope', async () => {
  const memory = await simulate('--placement', 'foot', '--no-gyroscope');
  const text = memory.text('sets/foot-no-gyroscope-typical-1.csv');
  expect(text).toContain('acc_x [m/s2]');
  expect(text).not.toContain('gyro');
});

test('people who keep no beat are written like all others', async () => {
  const memory = await simulate('--level', 'free', '--seed', '4');
  expect(csvRows(memory.text('sets/truth.csv')).length).toBe(
    simulateSet({ placement: 'heel', level: 'free', seed: 4 }).truth.repetitions.length,
  );
  expect(memory.text('sets/heel-free-4.csv')).toContain('level free, seed 4');
});

test('the same seed writes the same bytes', async () => {
  const [first, second] = [await simulate('--seed', '9'), await simulate('--seed', '9')];
  expect(first.files).toEqual(second.files);
});

test('what is there already is not written over unasked', async () => {
  const memory = await simulate();
  expect(await main(['simulate', '--out', 'sets'], memory.io)).toBe(2);
  expect(memory.error).toContain('is there already');
  expect(await main(['simulate', '--out', 'sets', '--replace'], memory.io)).toBe(0);
});
