import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';

const steady = Array<number>(10).fill(0.1);

test('bounds of the attempted count come from the detection, widened to hold the count', () => {
  const wide = judged({ heightsM: steady, detection: { countLow: 9, countHigh: 12 } });
  expect(wide.count).toMatchObject({ attempted: 10, low: 9, high: 12 });
  const odd = judged({ heightsM: steady, detection: { countLow: 11, countHigh: 12 } });
  expect(odd.count).toMatchObject({ low: 10, high: 12 });
});

test('a repetition that may be none lowers the bounds of the score', () => {
  const raises = { 4: { probability: 0.6 }, 7: { probability: 0.6 } };
  const { count } = judged({ heightsM: steady, raises });
  expect(count).toMatchObject({ valid: 10, validLow: 8, validHigh: 10 });
});

test('a movement that may be a repetition after all raises them, if it is high enough', () => {
  const doubtful = (heightM: number) => [
    { startS: 21, topS: 21.5, endS: 22, heightM, probability: 0.4, reason: 'unlike-the-set' as const },
  ];
  expect(judged({ heightsM: steady, detection: { doubtful: doubtful(0.09) } }).count.validHigh).toBe(11);
  expect(judged({ heightsM: steady, detection: { doubtful: doubtful(0.04) } }).count.validHigh).toBe(10);
});

test('repetitions at the threshold are borderline, cannot be told, and widen the interval', () => {
  const heightsM = [0.1, 0.1, 0.1, 0.076, 0.1, 0.074, 0.1];
  const { count } = judged({ heightsM, uM: 0.004 });
  expect(count).toMatchObject({ attempted: 7, valid: 6, borderline: 2, cannotTell: 2, validLow: 5, validHigh: 7 });
});

test('a shared error of the lever leaves the interval as it is', () => {
  const low = [0.1, 0.1, 0.1, 0.08, 0.08, 0.08, 0.08];
  // 5 mm of doubt per height that are not shared reach down to 75 %, which 1 mm does not
  expect(judged({ heightsM: low, uM: 0.005 }).count.validLow).toBeLessThan(7);
  expect(judged({ heightsM: low, uM: 0.001 }).count.validLow).toBe(7);
});
