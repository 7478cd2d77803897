import { courseFacts, propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { madeFacts } from '../../../support/guidance-facts.ts';
import { madeCourse, madeSession, today } from '../../../support/made-course.ts';

type Told = Record<string, string | number>;

const nothingLeft: Told = {
  place: 'mid-portion',
  irritability: 'low',
  'week-step-due': 'no',
  'level-now': 4,
  'days-at-level': 27,
  'worst-pain-lately': 2,
  'days-since-flare': 14,
  'return-criteria': 'no',
  'repetitions-left': 0,
  'range-left': 0,
  'load-left': 'no',
  'speed-left': 'no',
  'impact-left': 'no',
};

function changesOf(more: Told, heavyAgo = 3, right: Told = {}, sore = 'left') {
  const course = { ...courseFacts(madeCourse(), today, 5), 'days-since-heavy': heavyAgo };
  const given = madeFacts({ ...nothingLeft, ...course, ...more }, right, { 'sore-legs': sore });
  const { proposals } = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
  return proposals
    .filter(({ about, leg }) => about === 'change' && leg === 'left')
    .map(({ rule }) => rule.proposes.code);
}

describe('one variable goes up', () => {
  // common practice, no source: repetitions, range, load, speed, impact; a step of a schedule is one variable
  const order: readonly (readonly [string, Told])[] = [
    ['week', { 'week-step-due': 'yes' }],
    ['springs', { 'days-at-level': 28 }],
    ['repetitions', { 'repetitions-left': 1 }],
    ['range', { 'range-left': 5 }],
    ['load', { 'load-left': 'yes' }],
    ['speed', { 'speed-left': 'yes' }],
  ];

  test.each(order.map(([code], i) => [code, i] as const))('%s comes before what follows it', (code, i) => {
    const from = Object.assign({}, ...order.slice(i).map(([, told]) => told)) as Told;
    expect(changesOf(from)).toEqual([code]);
  });

  test('where nothing is left, nothing is proposed', () => {
    expect(changesOf({})).toEqual([]);
  });

  test('where it is not known whether the first one is left, none stands', () => {
    const given = { ...nothingLeft, 'load-left': 'yes', ...courseFacts(madeCourse(), today, 5) };
    const without = Object.fromEntries(Object.entries(given).filter(([code]) => code !== 'repetitions-left'));
    const { proposals } = propose(madeFacts(without), GUIDANCE_RULES, GUIDANCE_FACTS);
    const found = proposals.filter(({ about }) => about === 'change');
    expect(found.map(({ rule, standing }) => [rule.proposes.code, standing])).toEqual([['load', 'waits']]);
  });

  test('by range for no heel that is sore at the bone: the next one in its place', () => {
    const more = { 'range-left': 5, 'load-left': 'yes' };
    expect(changesOf({ ...more, place: 'insertion' })).toEqual(['load']);
    expect(changesOf({ ...more, place: 'both-places' })).toEqual(['load']);
  });
});

describe('springs', () => {
  // Silbernagel 2020, J Athl Train 55:438, table 2, adapted: four weeks of heavy raises, pain of at most 2, two weeks without a flare
  const due: Told = { 'days-at-level': 28 };
  test.each([
    [{}, ['springs']],
    [{ 'days-at-level': 27.9 }, []],
    [{ 'worst-pain-lately': 3 }, []],
    [{ 'days-since-flare': 13.9 }, []],
    [{ 'level-now': 3 }, []],
  ] as const)('%o: %o', (more, expected) => {
    expect(changesOf({ ...due, ...more })).toEqual(expected);
  });

  test('come two days after the last bounces or hops at the earliest', () => {
    const after = (told: Told) => {
      const course = { ...courseFacts(madeCourse(), today, 5), 'days-since-heavy': 3, ...told };
      const given = madeFacts({ ...nothingLeft, ...course, ...due }, {}, { 'sore-legs': 'left' });
      return propose(given, GUIDANCE_RULES, GUIDANCE_FACTS).proposals.some(
        ({ rule }) => rule.code === 'change-springs',
      );
    };
    expect([3, 2, 1.9].map((days) => after({ 'days-since-bounces': days }))).toEqual([true, true, false]);
    expect(after({})).toBe(true);
  });

  test('come two days after heavy raises at the earliest, and something else goes up before', () => {
    expect(changesOf({ ...due, 'repetitions-left': 1 }, 2)).toEqual(['springs']);
    expect(changesOf({ ...due, 'repetitions-left': 1 }, 1)).toEqual(['repetitions']);
  });
});

describe('sport', () => {
  const due: Told = { 'level-now': 5, 'return-criteria': 'yes', 'days-at-level': 14 };
  test.each([
    [{}, ['sport']],
    [{ 'days-at-level': 13 }, []],
    [{ 'level-now': 6 }, []],
    [{ 'return-criteria': 'no' }, []],
  ] as const)('%o: %o', (more, expected) => {
    expect(changesOf({ ...due, ...more })).toEqual(expected);
  });
});

test('range goes up from the level at a step on', () => {
  const floor = { 'valid-raises': 12, 'pain-single-raise': 2, 'settles-overnight': 'yes' };
  expect(changesOf({ ...floor, 'level-now': 2, 'range-left': 5 })).toEqual([]);
  expect(changesOf({ ...floor, 'level-now': 3, 'range-left': 5 })).toEqual(['range']);
});

test('nothing goes up on one leg as long as the other one, sore as well, does not go on', () => {
  const more = { 'repetitions-left': 3 };
  const other = (painDuring: number) =>
    courseFacts(
      madeCourse({ sessions: [madeSession(3), madeSession(1, { painDuring })], planned: [] }),
      today,
      5,
    ) as never;
  expect(changesOf(more, 3, other(2), 'both')).toEqual(['repetitions']);
  expect(changesOf(more, 3, other(6), 'both')).toEqual([]);
  expect(changesOf(more, 3, {}, 'both')).toEqual([]);
  expect(changesOf(more, 3, other(6), 'left')).toEqual(['repetitions']);
});
