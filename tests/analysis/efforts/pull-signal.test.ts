import { expect, test } from 'vitest';
import { pullSignal } from '../../../packages/analysis/src/efforts/pull-signal.ts';

const timesS = Float64Array.from({ length: 10 }, (_, i) => i / 100);
const samples = timesS.map((timeS) => 10 * timeS);
const group = (quantity: 'force' | 'torque' | 'angle', values = samples, times = timesS) => ({
  timesS: times,
  channels: [{ quantity, axis: null, samples: values }],
});

test('a force, or a torque where there is none, each in its own unit', () => {
  expect(pullSignal({ groups: [group('torque'), group('force')] })).toMatchObject({ unit: 'N' });
  expect(pullSignal({ groups: [group('angle'), group('torque')] })).toMatchObject({ unit: 'N.m' });
  expect(pullSignal({ groups: [group('force')] }).sampleRateHz).toBeCloseTo(100, 9);
});

test('what cannot be used is refused', () => {
  expect(() => pullSignal({ groups: [group('angle')] })).toThrow('force or torque');
  expect(() => pullSignal({ groups: [group('force', samples.slice(0, 5), timesS.slice(0, 5))] })).toThrow('n >= 8');
  expect(() =>
    pullSignal({
      groups: [
        group(
          'force',
          samples.map((v, i) => (i === 3 ? Number.NaN : v)),
        ),
      ],
    }),
  ).toThrow('index 3');
  expect(() => pullSignal({ groups: [group('force', samples.slice(1))] })).toThrow('length 10');
  expect(() => pullSignal({ groups: [group('force', samples, timesS.slice().reverse())] })).toThrow('later');
});
