import { effortDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { crossing, riseOnset, straightToZero } from '../../../packages/analysis/src/efforts/onset.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rule = effortDefaults.onset;
const triangle = {
  startS: 10,
  sampleRateHz: 100,
  values: Float64Array.from({ length: 401 }, (_, i) => Math.max(0, 100 - Math.abs(i - 200))),
};

test('a level is crossed between samples, backwards and forwards', () => {
  expect(crossing(triangle, 200, 40.5, -1)).toBeCloseTo(11.405, 9);
  expect(crossing(triangle, 200, 40.5, 1)).toBeCloseTo(12.595, 9);
  expect(crossing({ ...triangle, values: triangle.values.slice(150) }, 20, 40, -1)).toBeNull();
});

test('a straight rise leads back to where it began, a straight fall to where it ends', () => {
  expect(straightToZero(triangle, 200, 100, rule, -1)!.zeroS).toBeCloseTo(11, 9);
  expect(straightToZero(triangle, 200, 100, rule, 1)!.zeroS).toBeCloseTo(13, 9);
});

describe('the onset of shapes that are not those of the curve', () => {
  const shapes: Record<string, (t: number) => number> = {
    'half a cosine of 250 ms': (t) => (t > 0.25 ? 1 : (1 - Math.cos((Math.PI * t) / 0.25)) / 2),
    'straight, 200 ms': (t) => Math.min(1, t / 0.2),
    'second order, critically damped': (t) => 1 - (1 + t / 0.06) * Math.exp(-t / 0.06),
    'hyperbolic tangent': (t) => Math.tanh(t / 0.12),
    'x / (1 + x), x the square of t / 100 ms': (t) => t ** 2 / (t ** 2 + 0.01),
    'two phases': (t) => 0.6 * (1 - Math.exp(-t / 0.05)) + 0.4 * (1 - Math.exp(-((t / 0.35) ** 2))),
  };

  test.each(Object.entries(shapes))('%s: within 5 ms', (_, shape) => {
    const noise = madeNoise(4, 2);
    const timesS = Float64Array.from({ length: 1500 }, (_, i) => i / 1000);
    const force = (timeS: number): number => (timeS > 0.5004 ? 1000 * shape(timeS - 0.5004) : 0);
    const samples = timesS.map((timeS) => force(timeS) + noise());
    const pull = { startS: 0, sampleRateHz: 1000, values: timesS.map(force) };
    const line = straightToZero(pull, 1499, 1000, rule, -1)!;
    const toS = crossing(pull, 1499, 750, -1)!;
    const rise = { kind: 'fast', peak: 1000, noise: { sample: 2, stampS: 0 } } as const;
    const { timeS, method } = riseOnset({ timesS, samples }, null, line, { fromS: line.zeroS - 0.2, toS }, rise, rule);
    expect(method).toBe('curve');
    expect(Math.abs(timeS.value - 0.5004)).toBeLessThan(0.005);
    expect(Math.abs(timeS.value - 0.5004)).toBeLessThan(3 * timeS.u);
  });

  test('the form of a start that is not known counts where it is soft, and not where it bends', () => {
    const noise = madeNoise(4, 0.5);
    const timesS = Float64Array.from({ length: 1500 }, (_, i) => i / 1000);
    const steeper: number[] = [];
    const widened = (shape: (t: number) => number): number => {
      const force = (timeS: number): number => (timeS > 0.5004 ? 1000 * shape(timeS - 0.5004) : 0);
      const samples = timesS.map((timeS) => force(timeS) + noise());
      const line = straightToZero({ startS: 0, sampleRateHz: 1000, values: timesS.map(force) }, 1499, 1000, rule, -1)!;
      const rise = { kind: 'fast', peak: 1000, noise: { sample: 0.5, stampS: 0 } } as const;
      const u = (formU: number, formPower = 1): number =>
        riseOnset({ timesS, samples }, null, line, { fromS: line.zeroS - 0.2, toS: 0.75 }, rise, {
          ...rule,
          fast: { ...rule.fast, formU, formPower },
        }).timeS.u;
      steeper.push(u(0.02, 2) - u(0.02));
      return u(0.02) - u(0);
    };
    const [soft, bend] = [widened((t) => 1 - Math.exp(-((t / 0.12) ** 2.5))), widened((t) => 1 - Math.exp(-t / 0.1))];
    expect(soft).toBeGreaterThan(0.003);
    expect(bend).toBeLessThan(0.3 * soft);
    // a power of 2.5 is an excess of 1.5: squared it counts half as much again
    expect(steeper[0]).toBeGreaterThan(0.3 * soft);
    expect(steeper[1]).toBeLessThan(1e-4);
  });

  test('too few samples leave the straight line, with its wide uncertainty', () => {
    const few = { timesS: Float64Array.of(11, 11.5, 12), samples: Float64Array.of(0, 50, 100) };
    const line = straightToZero(triangle, 200, 100, rule, -1)!;
    const rise = { kind: 'ramp', peak: 100, noise: { sample: 1, stampS: 0 } } as const;
    const onset = riseOnset(few, null, line, { fromS: 10.9, toS: 11.75 }, rise, rule);
    expect(onset).toMatchObject({ method: 'line', curve: null });
    expect(onset.timeS.u).toBeCloseTo(rule.lineU * 0.15, 9);
  });
});
