import { courseFacts, GuidanceError, type LegCourse } from '@surae/guidance';
import { describe, expect, test } from 'vitest';
import { daysAgo, madeCourse, madeMornings, madeSession, today } from '../../support/made-course.ts';

const value = (course: Partial<LegCourse>, fact: string, limit = 5) => {
  const one = courseFacts(madeCourse(course), today, limit)[fact];
  return 'missing' in one ? one.missing : one.value;
};

describe('the newest session and the one before it', () => {
  test('are told with the day they are of', () => {
    const facts = courseFacts(madeCourse({ sessions: [madeSession(3, { painDuring: 4 }), madeSession(1)] }), today, 5);
    expect(facts['pain-during-before']).toEqual({ value: 4, from: { what: 'session-log', day: daysAgo(3) } });
    expect(facts['pain-during-last']).toMatchObject({ value: 2, from: { day: daysAgo(1) } });
  });

  test('stand beside the usual level of the mornings before, the morning of the session among them', () => {
    expect(value({ mornings: madeMornings(20, { 0: { pain: 4, stiffnessMin: 12 } }) }, 'morning-rise-last')).toBe(3);
    expect(value({ mornings: madeMornings(20, { 0: { stiffnessMin: 12 } }) }, 'stiffness-rise-last')).toBe(7);
    expect(value({ mornings: madeMornings(20, { 0: { stiffnessMin: 12 } }) }, 'stiffness-over-double-last')).toBe(2);
  });

  test('have no usual level from two mornings, and one from three', () => {
    expect(value({ mornings: madeMornings(2) }, 'morning-rise-last')).toBe('not-told');
    expect(value({ mornings: madeMornings(3) }, 'morning-rise-last')).toBe(0);
  });

  test('that was not told is missing, and not zero', () => {
    expect(value({ sessions: [madeSession(1, { painDuring: null })] }, 'pain-during-last')).toBe('not-told');
    expect(value({ sessions: [madeSession(1)] }, 'pain-during-before')).toBe('no-session');
    expect(value({ mornings: madeMornings(20, { 0: null }) }, 'morning-rise-last')).toBe('not-told');
  });
});

describe('the log', () => {
  test.each([
    ['the morning after was told', {}, 'yes'],
    ['it was not', { mornings: madeMornings(20, { 0: null }) }, 'no'],
    ['it was without its pain', { mornings: madeMornings(20, { 0: { pain: null } }) }, 'no'],
    ['the session is of today', { sessions: [madeSession(0)] }, 'not-yet'],
  ] as const)('%s', (_, course, expected) => {
    expect(value(course, 'morning-logged')).toBe(expected);
  });

  test('a planned session without a log is counted, and none of today is due yet', () => {
    expect(value({ planned: [daysAgo(5), daysAgo(3), daysAgo(2), daysAgo(0)] }, 'missed-in-row')).toBe(1);
    expect(value({ planned: [daysAgo(5), daysAgo(3), daysAgo(1), daysAgo(0)] }, 'missed-in-row')).toBe(0);
    expect(value({ planned: [6, 4, 2].map(daysAgo), sessions: [] }, 'missed-in-row')).toBe(3);
  });

  test('sessions in a row begin anew after one that was not logged', () => {
    expect(value({}, 'sessions-logged')).toBe(3);
    expect(value({ planned: [5, 4, 3, 1].map(daysAgo) }, 'sessions-logged')).toBe(2);
  });

  test('what lies after today is not there yet', () => {
    expect(value({ sessions: [madeSession(3), madeSession(-1, { painDuring: 9 })] }, 'pain-during-last')).toBe(2);
  });

  test('bounces that were never logged lie back as long as anything was logged, at least', () => {
    const since = (course: Partial<LegCourse>) => courseFacts(madeCourse(course), today, 5)['days-since-bounces'];
    expect(since({})).toMatchObject({ value: 5, low: 5, high: Number.POSITIVE_INFINITY });
    expect(since({ sessions: [madeSession(4, { impact: true }), madeSession(1)] })).toMatchObject({ value: 4 });
    expect(since({ sessions: [] })).toEqual({ missing: 'no-session' });
  });

  test('heavy raises that were never logged are not known, and not long ago', () => {
    expect(value({}, 'days-since-heavy')).toBe('no-session');
    expect(value({ sessions: [madeSession(3, { heavy: true }), madeSession(1)] }, 'days-since-heavy')).toBe(3);
  });
});

describe('days that were too much', () => {
  const hard = (course: Partial<LegCourse>, limit = 5) => {
    const one = courseFacts(madeCourse(course), today, limit)['hard-days'];
    return 'missing' in one ? one : [one.low, one.high];
  };

  test.each([
    ['none', {}, [0, 0]],
    ['pain in a session', { sessions: [madeSession(3, { painDuring: 6 }), madeSession(1)], planned: [] }, [1, 1]],
    ['a morning after', { mornings: madeMornings(20, { 0: { pain: 4 } }) }, [1, 1]],
    ['stiffness that is doubled', { mornings: madeMornings(20, { 0: { stiffnessMin: 11 } }) }, [1, 1]],
    ['five minutes told as ten', { mornings: madeMornings(20, { 0: { stiffnessMin: 10 } }) }, [0, 0]],
    ['a morning that was not told', { mornings: madeMornings(20, { 0: null }) }, [0, 1]],
    ['a planned session without a log', { planned: [5, 4, 3, 1].map(daysAgo) }, [0, 1]],
    ['a week ago', { sessions: [madeSession(7, { painDuring: 9 }), madeSession(1)], planned: [] }, [0, 0]],
    ['six days ago', { sessions: [madeSession(6, { painDuring: 9 }), madeSession(1)], planned: [] }, [1, 1]],
  ] as const)('%s', (_, course, expected) => {
    expect(hard(course)).toEqual(expected);
  });

  test('go by the limit of the leg', () => {
    const course = { sessions: [madeSession(1, { painDuring: 4 })], planned: [] };
    expect([hard(course, 5), hard(course, 3)]).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });
});

describe('mornings from week to week', () => {
  const weeks = (pains: readonly number[]) =>
    madeMornings(
      7 * pains.length - 1,
      Object.fromEntries(pains.flatMap((pain, week) => [0, 1, 2, 3, 4, 5, 6].map((day) => [7 * week + day, { pain }]))),
    );

  test('this week over the last one is rising, and the same is not', () => {
    expect(value({ mornings: weeks([2, 1]) }, 'week-trend')).toBe('rising');
    expect(value({ mornings: weeks([1, 1]) }, 'week-trend')).toBe('not-rising');
    expect(value({ mornings: weeks([1]) }, 'week-trend')).toBe('too-few');
  });

  test('the trend is that of the middle values of the weeks, the oldest first', () => {
    expect(value({ mornings: weeks([5, 4, 3, 2, 1]) }, 'morning-slope')).toBe(1);
    expect(value({ mornings: weeks([5, 4, 3, 2, 1]) }, 'morning-weeks')).toBe(5);
    expect(value({ mornings: weeks([1, 2, 3]) }, 'morning-slope')).toBe(-1);
  });

  test('its lower bound is above 0 where each week is over the one before, and not where two pairs are not', () => {
    expect(value({ mornings: weeks([4, 3, 2, 2, 1]) }, 'morning-slope-least')).toBe(0.5);
    expect(value({ mornings: weeks([4, 4, 2, 2, 1]) }, 'morning-slope-least')).toBeCloseTo(0, 12);
    expect(value({ mornings: weeks([3, 2, 1]) }, 'morning-slope-least')).toBe('too-few');
  });
});

test.each(['2026-02-30', '31.3.2026', ''])('%s is no day', (day) => {
  expect(() => courseFacts(madeCourse({ planned: [day] }), today, 5)).toThrow(GuidanceError);
});
