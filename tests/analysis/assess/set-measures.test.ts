import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';

test('the uncertainty of a sum adds up in full: twenty heights of 2 mm each are 40 mm', () => {
  const { displacementM } = judged({ heightsM: Array<number>(20).fill(0.1), uM: 0.002 }).measures;
  expect(displacementM?.value).toBeCloseTo(2, 9);
  expect(Math.abs((displacementM?.high ?? 0) - (2 + 1.959964 * 0.04))).toBeLessThan(1e-6);
  expect((displacementM?.low ?? 0) + (displacementM?.high ?? 0)).toBeCloseTo(4, 9);
});

test('what scores is summed apart from all that was attempted', () => {
  // the low one and those after the end do not score
  const { measures } = judged({ heightsM: [0.1, 0.1, 0.05, 0.1, 0.05, 0.05, 0.1] }, { subject: { bodyMassKg: 70 } });
  expect(measures.displacementM?.value).toBeCloseTo(0.55, 12);
  expect(measures.scoredDisplacementM?.value).toBeCloseTo(0.3, 12);
  expect((measures.scoredWork.heelJ ?? 0) / (measures.work.heelJ ?? 1)).toBeCloseTo(0.3 / 0.55, 12);
});

test('first three, last three, peak and mean height', () => {
  const { measures } = judged({ heightsM: [0.1, 0.11, 0.12, 0.09, 0.08, 0.07] });
  expect(measures.firstThreeHeightM).toBeCloseTo(0.11, 12);
  expect(measures.lastThreeHeightM).toBeCloseTo(0.08, 12);
  expect(measures.peakHeightM).toBe(0.12);
  expect(measures.meanHeightM).toBeCloseTo(0.095, 12);
});

test('a repetition whose top lies in a gap is in no sum and no mean, and that is said', () => {
  const { measures } = judged({ heightsM: [0.1, 0.1, 0.3], raises: { 2: { topInGap: true, longestGapS: 1 } } });
  expect(measures.heightsMeasured).toBe(2);
  expect(measures.displacementM?.value).toBeCloseTo(0.2, 12);
  expect(measures.peakHeightM).toBe(0.1);
});

test('time under tension runs from leaving the bottom to being back, rests left out', () => {
  const { measures } = judged({ heightsM: [0.1, 0.1, 0.1], rests: { 0: 2 } });
  expect(measures.timeUnderTensionS).toBeCloseTo(6, 12);
  expect(measures.timeToEndS).toBeCloseTo(8, 12);
});

test('an empty set has no means, sums of nothing are null and not zero', () => {
  const { measures } = judged({ heightsM: [] });
  expect(measures).toMatchObject({
    heightsMeasured: 0,
    timeToEndS: null,
    peakHeightM: null,
    displacementM: null,
    timeUnderTensionS: 0,
  });
  expect(measures.countAtFraction.every((one) => one.count === 0)).toBe(true);
});
