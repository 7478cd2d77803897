import { describe, expect, test } from 'vitest';
import { cumulativeTrapezoid, trapezoid } from '../../../packages/analysis/src/signal/integrate.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { isLinear, leavesInputUnchanged } from '../../support/laws.ts';

function sine(intervals: number): Float64Array {
  return Float64Array.from({ length: intervals + 1 }, (_, i) => Math.sin((Math.PI * i) / intervals));
}

describe('integrals by the trapezoid rule', () => {
  test('x squared from 0 to 1 in four parts is 0.34375: a third, and (b - a) h^2 f" / 12 = 1/96 too much', () => {
    expect(trapezoid([0, 1 / 16, 4 / 16, 9 / 16, 1], 0.25)).toBe(0.34375);
    expect([trapezoid([0, 1 / 16, 4 / 16, 9 / 16, 1], 0.25) - 1 / 3]).toBeCloseToEach([1 / 96], {
      rtol: 1e-12,
      atol: 0,
    });
  });

  test.each([
    // h (cot(h / 2)) in closed form: the trapezoid rule on half a sine
    [4, 1.8961188979],
    [10, 1.9835235375],
    [100, 1.9998355039],
  ])('half a sine in %d parts is %d', (intervals, expected) => {
    const h = Math.PI / intervals;
    expect([trapezoid(sine(intervals), h), h / Math.tan(h / 2)]).toBeCloseToEach([expected, expected], {
      rtol: 0,
      atol: 5e-11,
    });
  });

  test('ten times finer steps leave a hundredth of the error', () => {
    const ratio = (2 - trapezoid(sine(10), Math.PI / 10)) / (2 - trapezoid(sine(100), Math.PI / 100));
    // the next term of the series shifts the ratio by a sixth of a percent
    expect([ratio]).toBeCloseToEach([100], { rtol: 2e-3, atol: 0 });
  });

  test('the running integral starts at 0 and ends at the whole', () => {
    const samples = Float64Array.of(1, 3, -2, 4);
    expect(Array.from(cumulativeTrapezoid(samples, 0.5))).toEqual([0, 1, 1.25, 1.75]);
    expect(trapezoid(samples, 0.5)).toBe(1.75);
  });

  test('nothing and a single sample hold no area', () => {
    expect([trapezoid([], 1), trapezoid([5], 1)]).toEqual([0, 0]);
    expect(Array.from(cumulativeTrapezoid(Float64Array.of(5), 1))).toEqual([0]);
    expect(cumulativeTrapezoid(new Float64Array(0), 1).length).toBe(0);
  });

  test('laws: linear, leaves its input alone', () => {
    isLinear((x) => cumulativeTrapezoid(x, 0.01), arbitrarySignal(1, 40));
    leavesInputUnchanged((x) => cumulativeTrapezoid(x, 0.01), arbitrarySignal(1, 40));
  });

  test('an interval of 0 is refused', () => {
    expect(() => trapezoid([1, 2], 0)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
    expect(() => cumulativeTrapezoid(Float64Array.of(1, 2), -1)).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });
});
