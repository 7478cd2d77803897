import { slopeEstimate, steppedSlope } from '@surae/analysis';
import { expect, test } from 'vitest';

/** Lines through days, rounded to whole scores, at every slope and phase; some days are left out. */
const daysWritten = {
  'every day': Array.from({ length: 29 }, (_, day) => day),
  'a week and two far days': [0, 40, 41, 42, 43, 44, 45, 46, 84],
  'now and then': [0, 3, 4, 9, 15, 16, 22, 30],
};

test.each(Object.entries(daysWritten))(
  'a line that was rounded to whole scores lies in the interval: %s',
  (_, days) => {
    for (let tenth = -30; tenth <= 30; tenth++) {
      for (const phase of [0, 0.2, 0.4, 0.6, 0.8]) {
        const points = days.map((day) => ({ x: day / 7, y: Math.round(phase + (tenth / 10) * (day / 7)) }));
        const { low, high } = steppedSlope(slopeEstimate(points)!, points, 1);
        expect([tenth, phase, low! <= tenth / 10 && tenth / 10 <= high!]).toEqual([tenth, phase, true]);
      }
    }
  },
);

test('it holds the interval of the values behind the scores', () => {
  const behind = [5.4, 5.1, 4.7, 5.2, 4.4, 4.3, 4.6, 3.9, 3.6, 3.7, 3.2, 2.8].map((y, x) => ({ x, y }));
  const told = behind.map(({ x, y }) => ({ x, y: Math.round(y) }));
  const { low, high } = slopeEstimate(behind)!;
  const stepped = steppedSlope(slopeEstimate(told)!, told, 1);
  expect(stepped.low!).toBeLessThanOrEqual(low!);
  expect(stepped.high!).toBeGreaterThanOrEqual(high!);
});

test('a step of next to nothing leaves the interval of the ranks, and few points have none', () => {
  const points = [1.26, 1.27, 1.12, 1.16, 1.03, 0.9, 0.95].map((y, x) => ({ x, y }));
  const ranked = slopeEstimate(points)!;
  const { low, high } = steppedSlope(ranked, points, 1e-9);
  expect(low).toBeCloseTo(ranked.low!, 7);
  expect(high).toBeCloseTo(ranked.high!, 7);
  const few = points.slice(0, 4);
  expect(steppedSlope(slopeEstimate(few)!, few, 1)).toMatchObject({ low: null, high: null });
});
