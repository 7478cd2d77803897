import { readRecording } from '@surae/records';
import { simulateHops } from '@surae/simulation';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import { MemoryIo } from '../support/memory-io.ts';

async function simulate(...args: string[]): Promise<MemoryIo> {
  const memory = new MemoryIo();
  expect(await main(['simulate', '--test', 'hop-series', '--out', 'hops', ...args], memory.io)).toBe(0);
  return memory;
}

test('a recording reads back as it was simulated, at the rate that was asked for', async () => {
  const memory = await simulate('--level', 'hard', '--rate-hz', '500', '--seed', '3');
  const text = memory.text('hops/hops-platform-hard-500hz-3.csv');
  const [read] = readRecording(new TextEncoder().encode(text)).groups;
  const [made] = simulateHops({ placement: 'platform', level: 'hard', seed: 3, sampleRateHz: 500 }).trace.groups;
  expect(read.channels[0].quantity).toBe('force');
  expect(read.timesS).toHaveLength(made.timesS.length);
  const apart = made.channels[0].samples.map((sample, i) => Math.abs(sample - read.channels[0].samples[i]));
  // three digits are written
  expect(Math.max(...apart)).toBeLessThan(6e-4);
});

test('a sensor on the foot writes its axes, without a gyroscope three of them', async () => {
  for (const [options, count, name] of [
    [[], 6, 'foot'],
    [['--no-gyroscope'], 3, 'foot-no-gyroscope'],
  ] as const) {
    const memory = await simulate('--placement', 'foot', '--rate-hz', '200', ...options);
    const text = memory.text(`hops/hops-${name}-typical-200hz-1.csv`);
    expect(readRecording(new TextEncoder().encode(text)).groups[0].channels).toHaveLength(count);
  }
});

test('the truth holds every hop; the first has no contact before it', async () => {
  const memory = await simulate('--count', '2', '--seed', '5');
  const rows = csvRows(memory.text('hops/truth.csv'));
  const truth = [5, 6].map((seed) => simulateHops({ placement: 'platform', level: 'typical', seed }).truth);
  expect(rows).toHaveLength(truth[0].hops.length + truth[1].hops.length);
  expect(rows[0]).toMatchObject({ index: '1', land_s: '', contact_ms: '', stiffness_n_per_m: '' });
  expect(Number(rows[1]['contact_ms'])).toBeCloseTo(1000 * truth[0].hops[1].contactS!, 1);
  expect(Number(rows[1]['flight_ms'])).toBeCloseTo(1000 * truth[0].hops[1].flightS, 1);
  const manifest = csvRows(memory.text('hops/manifest.csv'));
  expect(manifest.map((row) => Number(row['body_mass_kg']))).toEqual(
    truth.map(({ massKg }) => Number(massKg.toFixed(1))),
  );
  expect(memory.out).toContain(`2 simulated recordings in hops, ${rows.length} true hops`);
});

test.each([
  ['platform', 2],
  ['foot', 30],
] as const)(
  'what is simulated is assessed near its truth: %s, contact and flight to %i ms',
  async (placement, mostMs) => {
    const memory = await simulate('--placement', placement, '--level', 'clean', '--seed', '7');
    const truth = csvRows(memory.text('hops/truth.csv'));
    memory.out = '';
    expect(await main(['assess', '--manifest', 'hops/manifest.csv', '--json'], memory.io)).toBe(0);
    const line = JSON.parse(memory.out) as { protocol: string; hops: Record<string, number | null>[] };
    expect(line.protocol).toBe('hop-series.own-pace');
    expect(line.hops).toHaveLength(truth.length);
    line.hops.forEach((hop, k) => {
      for (const key of ['contact_ms', 'flight_ms']) {
        if (hop[key] === null) continue;
        expect(Math.abs(hop[key] - Number(truth[k][key])), `${key} of ${k + 1}`).toBeLessThan(mostMs);
      }
    });
    expect(line.hops.filter((hop) => hop['contact_ms'] !== null).length).toBeGreaterThan(15);
  },
);
