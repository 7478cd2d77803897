import { readRecording } from '@surae/records';
import { simulatePulls } from '@surae/simulation';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import { MemoryIo } from '../support/memory-io.ts';

async function simulate(...args: string[]): Promise<MemoryIo> {
  const memory = new MemoryIo();
  expect(await main(['simulate', '--test', 'isometric', '--out', 'pulls', ...args], memory.io)).toBe(0);
  return memory;
}

test('a recording reads back as it was simulated, at the rate that was asked for', async () => {
  const memory = await simulate('--level', 'clean', '--rate-hz', '200', '--seed', '3');
  const text = memory.text('pulls/isometric-inline-ramp-clean-200hz-3.csv');
  const [read] = readRecording(new TextEncoder().encode(text)).groups;
  const [made] = simulatePulls({
    kind: 'ramp',
    level: 'clean',
    seed: 3,
    sampleRateHz: 200,
    faults: { restLoadN: 0 },
  }).trace.groups;
  expect(read.channels[0].quantity).toBe('force');
  expect(read.timesS).toHaveLength(made.timesS.length);
  made.channels[0].samples.forEach((sample, i) => {
    if (Math.abs(sample - read.channels[0].samples[i]) > 1e-3) expect(read.channels[0].samples[i]).toBe(sample);
  });
});

test('a plate reads the resting leg, a cell in line does not', async () => {
  for (const [placement, restN] of [
    ['platform', '85.00'],
    ['inline', '0.00'],
  ] as const) {
    const rows = csvRows((await simulate('--placement', placement)).text('pulls/truth.csv'));
    expect(new Set(rows.map((row) => row['rest_n']))).toEqual(new Set([restN]));
  }
});

test.each([
  ['ramp', 'inline', 200],
  ['fast', 'platform', 1000],
] as const)('what is simulated is assessed near its truth: %s, %s, %i Hz', async (kind, placement, rateHz) => {
  const memory = await simulate('--kind', kind, '--placement', placement, '--rate-hz', `${rateHz}`, '--seed', '7');
  const truth = csvRows(memory.text('pulls/truth.csv'));
  memory.out = '';
  expect(await main(['assess', '--manifest', 'pulls/manifest.csv', '--json'], memory.io)).toBe(0);
  const line = JSON.parse(memory.out) as { protocol: string; efforts: Record<string, number | null>[] };
  expect(line.protocol).toBe(kind === 'fast' ? 'isometric.seated-fast' : 'isometric.seated');
  expect(line.efforts).toHaveLength(truth.length);
  line.efforts.forEach((effort, k) => {
    const near = (key: string, share: number): void => {
      const trueValue = Number(truth[k][key]);
      expect(Math.abs(effort[key]! - trueValue) / trueValue, `${key} of ${k + 1}`).toBeLessThan(share);
    };
    near('peak_n', 0.01);
    near('mean_500ms_n', 0.01);
    near('onset_s', 0.02);
    if (kind === 'fast' && effort['rfd_0_200_n_per_s'] !== null) {
      near('rfd_0_200_n_per_s', 0.05);
      near('impulse_0_200_n_s', 0.1);
      near('time_to_50_percent_s', 0.1);
    }
  });
});

test('what is not made is refused by name', async () => {
  const refusal = async (...args: string[]): Promise<string> => {
    const memory = new MemoryIo();
    expect(await main(['simulate', '--out', 'd', ...args], memory.io)).toBe(2);
    return memory.error;
  };
  expect(await refusal('--test', 'isometric', '--placement', 'heel')).toContain('expected inline, platform');
  expect(await refusal('--test', 'isometric', '--kind', 'slow')).toContain('expected ramp, fast');
  expect(await refusal('--test', 'isometric', '--rate-hz', '333')).toContain('expected 80, 200, 1000, 2000');
  expect(await refusal('--kind', 'fast')).toContain('only with --test isometric');
  expect(await refusal('--placement', 'inline')).toContain('expected heel, foot, trunk, platform');
});
