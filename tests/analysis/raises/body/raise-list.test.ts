import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import type { Agreed } from '../../../../packages/analysis/src/raises/body/consensus.ts';
import { raiseList } from '../../../../packages/analysis/src/raises/body/raise-list.ts';

function agreed(topS: number, share: number): Agreed {
  return {
    startS: topS - 0.8,
    highFromS: topS - 0.1,
    topS,
    highToS: topS + 0.1,
    endS: topS + 0.8,
    startSpreadS: 0.05,
    topSpreadS: 0.03,
    endSpreadS: 0.05,
    ownRiseM: 0.05,
    ownVariance: 1e-6,
    ownSpreadM: 0,
    dipShare: 0,
    gapShare: 0,
    share,
  };
}
const rise = { riseM: 0.05, uncertaintyM: 0.004 };

test('as many are counted as the paths hold in the median, the surest first', () => {
  const list = raiseList(
    [agreed(1, 1), agreed(3, 0.4), agreed(5, 1)],
    [rise, rise, rise],
    [2, 2, 2, 3, 2],
    [],
    bodyDefaults,
  );
  expect(list.raises.map((one) => one.topS)).toEqual([1, 5]);
  expect(list.doubtful.map((one) => [one.topS, one.reason, one.probability])).toEqual([[3, 'improbable', 0.4]]);
  // the paths say 2 to 3 (97.5 % at 2.9), widened from the median of 2
  expect([list.countLow, list.countHigh]).toEqual([2, 4]);
});

test('where nothing is counted, everything that may have been a repetition is within the bounds', () => {
  const list = raiseList(
    [agreed(1, 0.4), agreed(3, 0.3), agreed(5, 0.1)],
    [rise, rise, rise],
    [0, 0],
    [],
    bodyDefaults,
  );
  expect(list.raises).toEqual([]);
  expect([list.countLow, list.countHigh]).toEqual([0, 2]);
});

test('no repetition is without doubt', () => {
  const list = raiseList([agreed(1, 1)], [rise], [1, 1], [], bodyDefaults);
  expect(list.raises[0].probability).toBe(1 - bodyDefaults.leastDoubt);
});

test('a movement below the least rise is doubtful however sure the paths are', () => {
  const low = { riseM: 0.006, uncertaintyM: 0.002 };
  const list = raiseList([agreed(1, 1)], [low], [1, 1], [], bodyDefaults);
  expect(list.raises).toEqual([]);
  expect(list.doubtful[0].reason).toBe('too-small');
});

test('repetitions that overlap meet half way', () => {
  const list = raiseList([agreed(1, 1), agreed(2.4, 1)], [rise, rise], [2], [], bodyDefaults);
  expect(list.raises[0].endS).toBeCloseTo(1.7, 9);
  expect(list.raises[1].startS).toBeCloseTo(1.7, 9);
});

test('a gap inside a repetition is measured, and one over its top is told', () => {
  const list = raiseList([agreed(1, 1)], [rise], [1], [{ fromS: 0.9, toS: 1.4 }], bodyDefaults);
  expect(list.raises[0].longestGapS).toBeCloseTo(0.5, 9);
  expect(list.raises[0].topInGap).toBe(true);
});
