import { describe, expect, test } from 'vitest';
import { profileAt, type Trial, withoutLoad } from '../../../packages/guidance/src/load/likelihood.ts';

const of = (...loads: readonly [number, 0 | 1][]): Trial[] =>
  loads.map(([load, one]) => ({ load, isFlare: one === 1 }));
const mixed = of([1, 0], [2, 0], [3, 1], [4, 0], [5, 1], [6, 1]);

describe('the likelihood', () => {
  test('where load makes no difference is that of a share', () => {
    // 3 of 6: 6 ln 0.5; 1 of 4: ln 0.25 + 3 ln 0.75
    expect(withoutLoad(mixed)).toBeCloseTo(6 * Math.log(0.5), 12);
    expect(withoutLoad(of([1, 1], [1, 0], [1, 0], [1, 0]))).toBeCloseTo(Math.log(0.25) + 3 * Math.log(0.75), 12);
    expect(withoutLoad(of([1, 0]))).toBe(0);
    expect(withoutLoad(of([1, 1]))).toBe(0);
  });

  test('over the slope is the best of the slow search', () => {
    const slow = (threshold: number): number => {
      let best = Number.NEGATIVE_INFINITY;
      for (let slope = 0; slope <= 20; slope += 0.001) {
        const sum = mixed.reduce((all, { load, isFlare }) => {
          const p = 1 / (1 + Math.exp(-slope * (load - threshold)));
          return all + Math.log(isFlare ? p : 1 - p);
        }, 0);
        best = Math.max(best, sum);
      }
      return best;
    };
    for (const at of [2, 3.5, 5]) expect(profileAt(mixed, at, 5)).toBeCloseTo(slow(at), 6);
  });

  test('of loads that part flares from none comes near to one between them, and of those that fall is that of no slope', () => {
    const parted = of([1, 0], [2, 0], [8, 1], [9, 1]);
    expect(profileAt(parted, 5, 8)).toBeCloseTo(0, 6);
    const reversed = parted.map(({ load, isFlare }) => ({ load, isFlare: !isFlare }));
    expect(profileAt(reversed, 17, 8)).toBeCloseTo(4 * Math.log(0.5), 2);
  });
});
