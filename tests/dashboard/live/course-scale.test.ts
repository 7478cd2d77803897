import { expect, test } from 'vitest';
import { coursePath, roundAbove } from '../../../apps/dashboard/src/live/course-scale.ts';

test('the top of the picture is a round number with a little room above the force', () => {
  expect([0, 150, 199, 200, 450, 480, 960, 990].map((value) => roundAbove(value, 100))).toEqual([
    200, 200, 500, 500, 500, 1000, 2000, 2000,
  ]);
});

test('a course is drawn from the left, its zero at the bottom', () => {
  const course = [
    [0, 0],
    [0.2, 250],
    [0.4, 500],
  ] as const;
  expect(coursePath(course, 0.4, 500)).toBe('M0.00,100.00 L50.00,50.00 L100.00,0.00');
});

test('a line ends before a hole and begins anew after it', () => {
  const course = [
    [0, 0],
    [0.25, 100],
    [1, 200],
    [1.25, 300],
  ] as const;
  expect(coursePath(course, 2.5, 400)).toBe('M0.00,100.00 L10.00,75.00 M40.00,50.00 L50.00,25.00');
});
