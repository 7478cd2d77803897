import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { stringReading } from '../../../../packages/analysis/src/movement/foot-lever.ts';
import { detectHeelRaises } from '../../../../packages/analysis/src/raises/detect-heel.ts';
import { slantRelativeU } from '../../../../packages/analysis/src/raises/heel/string-slant.ts';

const LEVER_M = 0.186;
const foot = { heelLeverM: LEVER_M };
/** What a string of 10 cm reads where the foot line stands at so many degrees. */
const readAt = (degrees: number) => ({ heightM: stringReading((degrees * Math.PI) / 180, LEVER_M, 0.1) });

test.each([
  // by hand: over-reading of a string of 10 cm on a lever of 186 mm, sqrt((h0 + h)^2 + d^2) - h0 - h over h
  [35, 0.025],
  [45, 0.048],
])('at %d degrees it is the over-reading of the shortest string over the root of 3', (degrees, share) => {
  expect(slantRelativeU([readAt(10), readAt(degrees)], foot, heelDefaults) * Math.sqrt(3)).toBeCloseTo(share, 3);
});

test('a string whose length is known is corrected for, and nothing read is nothing in doubt', () => {
  expect(slantRelativeU([readAt(35)], { ...foot, stringRestLengthM: 0.1 }, heelDefaults)).toBe(0);
  expect(slantRelativeU([], foot, heelDefaults)).toBe(0);
});

test('heights of a string whose length nobody gave are covered by their intervals on simulated sets', () => {
  const covered = Array.from({ length: 10 }, (_, at) => {
    const { trace, subject, truth } = simulateSet({
      placement: 'heel',
      level: 'typical',
      seed: at + 1,
      count: 15,
      cycleS: 2,
    });
    const { raises } = detectHeelRaises(trace, 'heel', { heelLeverM: subject.heelLeverM }, heelDefaults);
    expect(raises).toHaveLength(truth.repetitions.length);
    return raises.map(({ heightM, heightUM }, i) => {
      return Math.abs(heightM - truth.repetitions[i].heelHeightM) <= 1.96 * heightUM;
    });
  }).flat();
  // 84 of 100 without what the slant adds
  expect(covered.filter(Boolean).length).toBeGreaterThanOrEqual(0.95 * covered.length);
});
