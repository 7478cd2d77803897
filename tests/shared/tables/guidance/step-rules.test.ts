import { courseFacts, type LegCourse, propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { madeFacts } from '../../../support/guidance-facts.ts';
import { daysAgo, madeCourse, madeMornings, madeSession, today } from '../../../support/made-course.ts';

const told = { place: 'mid-portion', irritability: 'moderate' } as const;

/** What is proposed for the left leg, and whether it stands. */
function stepOf(course: Partial<LegCourse>, more: Record<string, string | number> = {}) {
  const given = madeFacts({ ...told, ...courseFacts(madeCourse(course), today, 5), ...more });
  const one = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS).proposals.find(
    ({ about, leg }) => about === 'step' && leg === 'left',
  );
  return one === undefined ? 'none' : `${one.rule.proposes.code} ${one.standing}`;
}

const last = (changes: object) => ({ sessions: [madeSession(5), madeSession(3), madeSession(1, changes)] });
const before = (changes: object) => ({ sessions: [madeSession(5), madeSession(3, changes), madeSession(1)] });
const morning = (changes: object) => ({ mornings: madeMornings(20, { 0: changes }) });

// common practice, no source: a step up after two sessions, the morning after governs
describe('a dose from session to session', () => {
  test.each([
    ['all as asked for', {}, 'progress stands'],
    ['90 % of the plan done', last({ shareDone: 0.9 }), 'progress stands'],
    ['just under 90 %', last({ shareDone: 0.899 }), 'hold stands'],
    ['just under 90 % in the session before', before({ shareDone: 0.899 }), 'hold stands'],
    ['pain at the limit', last({ painDuring: 5 }), 'progress stands'],
    ['pain over the limit', last({ painDuring: 6 }), 'reduce stands'],
    ['pain over the limit in the session before', before({ painDuring: 6 }), 'hold stands'],
    ['effort of 8', last({ exertion: 8 }), 'progress stands'],
    ['effort of 9', last({ exertion: 9 }), 'hold stands'],
    ['a morning one over its usual level', morning({ pain: 2 }), 'progress stands'],
    ['a morning two over it', morning({ pain: 3 }), 'hold stands'],
    ['a morning three over it', morning({ pain: 4 }), 'reduce stands'],
    ['stiffness a minute longer', morning({ stiffnessMin: 6 }), 'hold stands'],
    ['stiffness just not doubled', morning({ stiffnessMin: 9 }), 'hold stands'],
    ['stiffness doubled', morning({ stiffnessMin: 10 }), 'reduce stands'],
    ['one session alone', { sessions: [madeSession(1)], planned: [] }, 'hold stands'],
  ])('%s', (_, course, expected) => {
    expect(stepOf(course)).toBe(expected);
  });

  test('with high irritability the limit of pain is lower', () => {
    expect(stepOf(last({ painDuring: 3 }), { irritability: 'high' })).toBe('progress stands');
    expect(stepOf(last({ painDuring: 4 }), { irritability: 'high' })).toBe('reduce stands');
  });
});

describe('what is not told', () => {
  test.each([
    ['the morning after', morning({ pain: null })],
    ['any of the morning after', { mornings: madeMornings(20, { 0: null }) }],
    ['the newest planned session', { sessions: [madeSession(5), madeSession(3)] }],
    ['a session of today has no morning yet', { sessions: [madeSession(3), madeSession(1), madeSession(0)] }],
  ])('%s: nothing goes up', (_, course) => {
    expect(stepOf(course)).toMatch(/^wait/);
  });

  test.each(['painDuring', 'exertion', 'shareDone'])('%s: nothing goes up', (part) => {
    expect(stepOf(last({ [part]: null }))).not.toMatch(/^progress/);
  });
});

describe('days that were too much', () => {
  const two = [madeSession(5, { painDuring: 6 }), madeSession(3), madeSession(1, { painDuring: 6 })];

  test('two in a week lead one level down, and one does not', () => {
    expect(stepOf({ sessions: two })).toBe('drop stands');
    expect(stepOf(last({ painDuring: 6 }))).toBe('reduce stands');
  });

  test('two of which one is eight days ago do not', () => {
    expect(stepOf({ sessions: [madeSession(8, { painDuring: 6 }), ...two.slice(1)], planned: [] })).toBe(
      'reduce stands',
    );
  });

  test('mornings that rise over five weeks do, and over four they do not', () => {
    expect(stepOf({}, { 'morning-weeks': 5, 'morning-slope': 0.1 })).toBe('drop stands');
    expect(stepOf({}, { 'morning-weeks': 4, 'morning-slope': 0.1 })).toBe('progress stands');
    expect(stepOf({}, { 'morning-weeks': 5, 'morning-slope': 0 })).toBe('progress stands');
  });

  test('one that was, and one that was not told, may be two: less is proposed, and a drop is not ruled out', () => {
    expect(stepOf({ ...last({ painDuring: 6 }), mornings: madeMornings(20, { 2: null }) })).toBe('reduce waits');
  });
});

describe('gaps', () => {
  const once = (ago: number) => ({ sessions: [madeSession(ago + 2), madeSession(ago)], planned: [] });

  test('of more than two weeks begin one level lower, and of two weeks do not', () => {
    expect(stepOf(once(15))).toBe('restart-lower stands');
    expect(stepOf(once(14))).not.toMatch(/^restart/);
  });

  test('of three planned sessions without a log are asked about first, before the dose changes', () => {
    const course = (missed: readonly number[]) => ({
      sessions: [madeSession(20), madeSession(18)],
      planned: [20, 18, ...missed].map(daysAgo),
    });
    expect(stepOf(course([5, 3, 1]))).toBe('ask stands');
    expect(stepOf(course([3, 1]))).toBe('restart-lower stands');
    expect(stepOf(course([5, 3, 1]), { 'missed-asked': 'yes' })).toBe('restart-lower stands');
  });
});
