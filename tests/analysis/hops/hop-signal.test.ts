import { expect, test } from 'vitest';
import { footSignal, forceSignal } from '../../../packages/analysis/src/hops/hop-signal.ts';

const timesS = Float64Array.from({ length: 10 }, (_, i) => i / 500);
const samples = new Float64Array(10);
const axes = ['x', 'y', 'z'] as const;

test('the force at its own times, with its interval', () => {
  const signal = forceSignal({ groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] });
  expect(signal.force).toBe(samples);
  expect(signal.intervalS).toBeCloseTo(0.002, 12);
  expect(signal.jitterS).toBeLessThan(1e-9);
});

test('acceleration with a gyroscope, or without', () => {
  const acceleration = axes.map((axis) => ({ quantity: 'acceleration' as const, axis, samples }));
  const turn = axes.map((axis) => ({ quantity: 'angular-velocity' as const, axis, samples }));
  expect(footSignal({ groups: [{ timesS, channels: acceleration }] }).turn).toBeNull();
  expect(footSignal({ groups: [{ timesS, channels: [...acceleration, ...turn] }] }).turn).toHaveLength(3);
});

test('what is missing or broken is named', () => {
  expect(() => forceSignal({ groups: [] })).toThrow('force');
  expect(() =>
    footSignal({ groups: [{ timesS, channels: [{ quantity: 'acceleration', axis: 'x', samples }] }] }),
  ).toThrow('acceleration');
  const broken = samples.slice();
  broken[3] = Number.NaN;
  expect(() =>
    forceSignal({ groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples: broken }] }] }),
  ).toThrow('finite');
});
