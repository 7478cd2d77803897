import { EFFORT_COLUMNS, PULL_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';
import { pullResult } from '../../apps/cli/src/pull-json.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { exponentialEffort, rampEffort } from '../support/made-pull.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';

type Effort = Readonly<Record<string, unknown>>;
const effortsOf = (result: Record<string, unknown>): Effort[] => result['efforts'] as Effort[];

test('efforts of force: net peak and mean with their uncertainties, newton metres empty', () => {
  const result = pullResult(assessedPulls(madeRecording(madeRamps([1400, 1425, 1410]))));
  const [, second] = effortsOf(result);
  expect(Object.keys(second)).toEqual(EFFORT_COLUMNS.map(({ key }) => key));
  expect(Math.abs((second['mean_500ms_n'] as number) - 1425)).toBeLessThan(0.5);
  expect(Math.abs((second['mean_500ms_gross_n'] as number) - 1510)).toBeLessThan(0.5);
  expect(Math.abs((second['peak_n'] as number) - 1425)).toBeLessThan(2);
  for (const key of ['onset_u_s', 'end_u_s', 'peak_u_n', 'mean_500ms_u_n']) expect(second[key]).toBeGreaterThan(0);
  expect(second).toMatchObject({ accepted: 'yes', reasons: [], undecided: [], peak_nm: null, mean_500ms_nm: null });
  expect(second).toMatchObject({ rfd_0_100_n_per_s: null, rfd_0_100_u_n_per_s: null, rfd_0_100_reason: 'ramped' });
  expect(second).toMatchObject({ start_distinct: null });
});

test('the figures of the whole stand under the keys of their columns', () => {
  const result = pullResult(assessedPulls(madeRecording(madeRamps([1400, 1425, 1410])), pullItem({ bodyMassKg: 82 })));
  for (const { key } of PULL_COLUMNS) {
    const value = key.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], result);
    expect(value, key).not.toBeUndefined();
  }
  expect(result).toMatchObject({
    unit: 'N',
    count: { found: 3, accepted: 3, cannot_tell: 0 },
    score: { rule: 'best-mean', effort: 2, net_nm: null },
    trials: { of: 3, consistency: 'good', another: [] },
    effort: { good: 'yes', reasons: [] },
    gate: { usable: 'yes' },
    withheld: ['no-forefoot-lever', 'no-calibration'],
    issues: [],
  });
});

test('fast efforts have their rates: 1000 N (1 - exp(-t / 0.1 s))', () => {
  const efforts = [3, 9].map((atS) => exponentialEffort(atS, 1000, 0.1, 1.5));
  const text = madeRecording({ efforts, lengthS: 14, sampleRateHz: 1000, noise: 0.5, rest: () => 85 });
  const result = pullResult(assessedPulls(text, pullItem({ protocol: 'isometric.seated-fast' })));
  for (const effort of effortsOf(result)) {
    expect(effort['rfd_0_100_n_per_s'] as number).toBeCloseTo(6321, -2);
    expect(effort['rfd_0_200_n_per_s'] as number).toBeCloseTo(4323, -2);
    expect(effort['rfd_0_200_u_n_per_s']).toBeGreaterThan(0);
    expect(effort['rfd_0_200_reason']).toBeNull();
    // 1000 N (0.2 s - 0.1 s (1 - exp(-2))), 0.1 s ln(1 / 0.7) and 0.1 s ln 2
    expect(effort['impulse_0_200_n_s'] as number).toBeCloseTo(113.5, 0);
    expect(effort['time_to_30_percent_s'] as number).toBeCloseTo(0.0357, 2);
    expect(effort['time_to_50_percent_s'] as number).toBeCloseTo(0.0693, 2);
    expect(effort['early_rise_reason']).toBeNull();
    expect(effort).toMatchObject({ start_distinct: 'yes' });
  }
});

test('torque stands under newton metres, and what is no effort is listed', () => {
  const made = {
    efforts: [rampEffort(4, 90, 2, 4), rampEffort(16, 90, 2, 40)],
    lengthS: 24,
    sampleRateHz: 200,
    noise: 0.05,
  };
  const text = madeRecording({ ...made }, 'torque [N.m]');
  const result = pullResult(assessedPulls(text, pullItem({ placement: undefined })));
  const [effort] = effortsOf(result);
  expect(effort).toMatchObject({ peak_n: null, mean_500ms_n: null, rfd_0_100_n_per_s: null });
  expect(effort['mean_500ms_nm'] as number).toBeCloseTo(90, 1);
  expect(result['not_efforts']).toMatchObject([{ reason: 'cut-off' }]);
});
