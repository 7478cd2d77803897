import { expect, test } from 'vitest';
import { coursePoints, roundAbove } from '../../../apps/dashboard/src/live/course-scale.ts';

test('the top of the picture is a round number with a little room above the force', () => {
  expect([0, 150, 199, 200, 450, 480, 960, 990].map((value) => roundAbove(value, 100))).toEqual([
    200, 200, 500, 500, 500, 1000, 2000, 2000,
  ]);
});

test('a course is drawn from the left, its zero at the bottom', () => {
  const course = [
    [0, 0],
    [5, 250],
    [10, 500],
  ] as const;
  expect(coursePoints(course, 10, 500)).toBe('0.00,100.00 50.00,50.00 100.00,0.00');
});
