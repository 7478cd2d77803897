import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findBumps, joinBumps } from '../../../../packages/analysis/src/raises/heel/bumps.ts';

const tops = (bumps: readonly { top: number }[]): number[] => bumps.map((bump) => bump.top);

describe('bumps', () => {
  test('are the turns of at least the swing, with the lows between', () => {
    const bumps = findBumps(Float64Array.of(0, 1, 5, 4.8, 5.1, 2, 0, 0.3, 0, 6, 1), 1);
    expect(tops(bumps)).toEqual([5.1, 6]);
    expect(bumps[0]).toMatchObject({ leftIndex: 0, topIndex: 4, rightIndex: 6, left: 0, right: 0 });
    expect(bumps[1]).toMatchObject({ topIndex: 9, rightIndex: 10, right: 1 });
  });

  test('include a rise that the end of the recording cuts off', () => {
    expect(tops(findBumps(Float64Array.of(0, 3, 0, 2, 4), 1))).toEqual([3, 4]);
  });

  test('are none in a flat or too small signal', () => {
    expect(findBumps(new Float64Array(20), 1)).toEqual([]);
    expect(findBumps(Float64Array.of(0, 0.5, 0, 0.5, 0), 1)).toEqual([]);
    expect(findBumps(Float64Array.of(3), 1)).toEqual([]);
  });

  test('have tops above their lows, in time order, whatever the signal', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 1, maxLength: 60 }), (values) => {
        const bumps = findBumps(Float64Array.from(values), 3);
        bumps.forEach((bump, i) => {
          expect(bump.leftIndex).toBeLessThanOrEqual(bump.topIndex);
          expect(bump.topIndex).toBeLessThanOrEqual(bump.rightIndex);
          if (i > 0) expect(bumps[i - 1].rightIndex).toBe(bump.leftIndex);
          if (i > 0) expect(bump.top - bump.left).toBeGreaterThanOrEqual(3);
        });
      }),
      { seed: 31 },
    );
  });
});

describe('joining', () => {
  const half = (high: { level: number }): number => 0.5 * high.level;

  test('takes the two highs of a dip at the top as one', () => {
    const bumps = findBumps(Float64Array.of(0, 10, 7, 9, 0, 10, 0), 1);
    expect(tops(joinBumps(bumps, half))).toEqual([10, 10]);
  });

  test('keeps two highs that a fall of more than half parts', () => {
    expect(tops(joinBumps(findBumps(Float64Array.of(0, 10, 4, 10, 0), 1), half))).toEqual([10, 10]);
  });

  test('is not held up by a smaller bump that stands on its own', () => {
    // the dip beside a low bounce was once kept, because the bounce was the smaller bump
    const bumps = findBumps(Float64Array.of(0, 10, 7, 9, 0, 2, 0, 10, 0), 1);
    expect(tops(joinBumps(bumps, half))).toEqual([10, 2, 10]);
  });

  test('drops a bounce together with the higher of its lows', () => {
    const joined = joinBumps(findBumps(Float64Array.of(0, 10, 0, 2, 1, 10, 0), 0.5), () => 3);
    expect(tops(joined)).toEqual([10, 10]);
    expect(joined[0].right).toBe(0);
  });

  test('of nothing is nothing', () => {
    expect(joinBumps([], half)).toEqual([]);
  });
});
