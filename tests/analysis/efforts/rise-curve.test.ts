import { describe, expect, test } from 'vitest';
import { forceOnCurve, type RiseCurve } from '../../../packages/analysis/src/efforts/rise-curve.ts';

const plain: RiseCurve = {
  startS: 2,
  takeUpS: 0,
  takeUpShare: 0,
  takeUpPower: 1,
  riseS: 0.1,
  power: 1,
  settling: 0,
  height: 1000,
};
const rounded = (curve: RiseCurve, times: readonly number[]): number[] =>
  times.map((afterS) => Math.round(1000 * forceOnCurve(curve, 2 + afterS)) / 1000);

test('1000 (1 - exp(-t / 0.1)) after 50, 100 and 200 ms: 393.469, 632.121, 864.665', () => {
  expect(rounded(plain, [0.05, 0.1, 0.2, -1])).toEqual([393.469, 632.121, 864.665, 0]);
});

describe('how a rise settles', () => {
  test('1: x^2 / (1 + x^2)', () => {
    expect(rounded({ ...plain, power: 2, settling: 1 }, [0.05, 0.1, 0.2])).toEqual([200, 500, 800]);
  });

  test('-1/2: 1 - (1 - x / 2)^2, whole from x = 2 on', () => {
    expect(rounded({ ...plain, settling: -0.5 }, [0.05, 0.1, 0.2, 0.5])).toEqual([437.5, 750, 1000, 1000]);
  });

  test('nearly 0 is the exponential', () => {
    for (const settling of [-1e-5, -1e-7, 1e-7, 1e-5]) {
      expect(Math.abs(forceOnCurve({ ...plain, settling }, 2.07) - forceOnCurve(plain, 2.07))).toBeLessThan(0.01);
    }
  });
});

test('slack is taken up first: half of its time gives a quarter of its force at power 2', () => {
  const slack = { ...plain, takeUpS: 0.1, takeUpShare: 0.08, takeUpPower: 2 };
  expect(rounded(slack, [0.05, 0.1, 0.2])).toEqual([20, 80, 661.551]); // 80 + 920 (1 - 1 / e)
});
