import { effortDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { fitRise, forceOnCurve } from '../../../packages/analysis/src/efforts/rise-curve.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rule = effortDefaults.onset;

test('1000 (1 - exp(-t / 0.1)) after 50, 100 and 200 ms: 393.469, 632.121, 864.665', () => {
  const curve = { startS: 2, riseS: 0.1, power: 1, height: 1000 };
  const forces = [0.05, 0.1, 0.2, -1].map((t) => Math.round(1000 * forceOnCurve(curve, 2 + t)) / 1000);
  expect(forces).toEqual([393.469, 632.121, 864.665, 0]);
});

describe('the fit', () => {
  const timesS = Float64Array.from({ length: 350 }, (_, i) => 2.9 + i / 1000);
  const first = { startS: 3.03, riseS: 0.1, power: 1.5, height: 900, startUS: 0 };
  const noise = { sample: 2, stampS: 0 };

  test.each([1, 1.5, 2])('finds start, rise and height again, power %d', (power) => {
    const truth = { startS: 3.0123, riseS: 0.12, power, height: 1000 };
    const random = madeNoise(9, 2);
    const samples = timesS.map((timeS) => forceOnCurve(truth, timeS) + random());
    const fitted = fitRise({ timesS, samples }, first, noise, rule)!;
    expect(Math.abs(fitted.startS - truth.startS)).toBeLessThan(3 * fitted.startUS);
    expect(fitted.startUS).toBeLessThan(0.003);
    expect(Math.abs(fitted.riseS - truth.riseS)).toBeLessThan(0.006);
    expect(Math.abs(fitted.height - 1000)).toBeLessThan(25);
  });

  test('a knock on the rise moves the start by little', () => {
    const truth = { startS: 3.0123, riseS: 0.12, power: 1.4, height: 1000 };
    const plain = timesS.map((timeS) => forceOnCurve(truth, timeS));
    const knocked = plain.map((value, i) => (i > 150 && i < 165 ? value + 120 : value));
    const start = (samples: Float64Array): number => fitRise({ timesS, samples }, first, noise, rule)!.startS;
    expect(Math.abs(start(plain) - truth.startS)).toBeLessThan(0.0005);
    expect(Math.abs(start(knocked) - truth.startS)).toBeLessThan(0.003);
  });

  test('a flat signal has no rise to fit', () => {
    const fitted = fitRise({ timesS, samples: timesS.map(() => 0) }, first, noise, rule);
    expect(fitted === null || Math.abs(fitted.height) < 50 || fitted.startS > 3.2).toBe(true);
  });
});
