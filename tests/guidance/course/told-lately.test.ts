import { courseFacts, type LegCourse } from '@surae/guidance';
import { expect, test } from 'vitest';
import { daysAgo, madeCourse, madeMornings, madeSession, today } from '../../support/made-course.ts';

const value = (course: Partial<LegCourse>, fact: string) => {
  const one = courseFacts(madeCourse(course), today, 5)[fact];
  return 'missing' in one ? one.missing : one.value;
};

test.each([
  ['everything', {}, 'yes'],
  ['no session at all', { sessions: [], planned: [] }, 'yes'],
  ['no pain of the last one', { sessions: [madeSession(3), madeSession(1, { painDuring: null })] }, 'no'],
  ['no effort of the one before', { sessions: [madeSession(3, { exertion: null }), madeSession(1)] }, 'no'],
  ['no morning after the one before', { mornings: madeMornings(20, { 2: null }) }, 'no'],
  ['too few mornings for a usual one', { mornings: madeMornings(2) }, 'no'],
] as const)('told in full: %s', (_, course, expected) => {
  expect(value(course, 'told-in-full')).toBe(expected);
});

test('the share left out is that of the planned sessions of two weeks, nothing done counted as left out', () => {
  const planned = [15, 14, 8, 4, 1].map(daysAgo);
  const course = {
    planned,
    sessions: [madeSession(8), madeSession(4, { shareDone: 0 }), madeSession(1, { shareDone: null })],
  };
  expect([value(course, 'planned-two-weeks'), value(course, 'left-out-two-weeks')]).toEqual([4, 0.5]);
  expect([value({ planned: [] }, 'planned-two-weeks'), value({ planned: [] }, 'left-out-two-weeks')]).toEqual([0, 0]);
});

test.each([
  [{}, 'no-flare'],
  [{ 0: { pain: 3 } }, 'no-flare'],
  [{ 0: { pain: 4 } }, 'flare'],
  [{ 0: null }, 'not-told'],
] as const)('this morning %o: %s', (others, expected) => {
  expect(value({ mornings: madeMornings(20, others) }, 'morning-now')).toBe(expected);
});
