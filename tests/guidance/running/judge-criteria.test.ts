import { criteriaFact, factTable, judgeCriteria } from '@surae/guidance';
import { FULL_RETURN, GUIDANCE_FACTS, GUIDANCE_SETTLED_BY, KEEP_UP, START_RUNNING } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { known, madeFacts } from '../../support/guidance-facts.ts';

const facts = factTable(GUIDANCE_FACTS);
type Told = Parameters<typeof madeFacts>[0];

const ready = {
  'pain-brisk-walk': 2,
  'valid-raises': 20,
  'pain-ten-raises': 2,
  irritability: 'low',
  'days-stable': 14,
  'pain-twenty-hops': 3,
  'rise-after-hops': 0,
  'ratio-allowed': 'yes',
  'side-ratio': known(0.9, { low: 0.8, high: 1 }),
  'push-target-set': 'yes',
  'push-of-target': 1,
} as const satisfies Told;

const full = {
  'days-usual-training': 14,
  'worst-morning-lately': 1,
  'questionnaire-changed': 'yes',
  'endurance-in-reference': 'yes',
  'strength-in-reference': 'yes',
  'ratio-allowed': 'yes',
  'side-ratio': known(0.95, { low: 0.9, high: 1 }),
} as const satisfies Told;

const without = (told: Told, ...left: readonly string[]): Told =>
  Object.fromEntries(Object.entries(told).filter(([code]) => !left.includes(code)));
const start = (told: Told) => judgeCriteria(START_RUNNING, 'left', madeFacts(told), facts);
const whole = (told: Told) => judgeCriteria(FULL_RETURN, 'left', madeFacts(told), facts);

describe('before running', () => {
  test('everything at its limit is met', () => {
    expect(start(ready)).toMatchObject({ held: 'yes', isMet: true, leg: 'left' });
  });

  test.each([
    ['pain-brisk-walk', 2.01, 'brisk-walk'],
    ['valid-raises', 19, 'raises'],
    ['pain-ten-raises', 2.01, 'ten-raises'],
    ['irritability', 'moderate', 'low-grade'],
    ['days-stable', 13, 'stable'],
    ['pain-twenty-hops', 3.01, 'hops'],
    ['rise-after-hops', 0.01, 'hops'],
    ['side-ratio', known(0.7, { low: 0.6, high: 0.799 }), 'ratio'],
    ['push-of-target', 0.999, 'push'],
  ])('%s just past its limit is not met', (fact, value, code) => {
    const { held, isMet, criteria } = start({ ...ready, [fact]: value });
    expect([held, isMet, criteria.filter((one) => one.held === 'no').map((one) => one.criterion.code)]).toEqual([
      'no',
      false,
      [code],
    ]);
  });

  test.each(Object.keys(ready))(
    'without %s it cannot be told: not met, not the same as no, and with what settles it',
    (fact) => {
      const { held, isMet, criteria } = start({ ...ready, [fact]: { missing: 'not-asked' } });
      // whether something is asked for at all settles nothing where it is met
      const isSettled = fact === 'ratio-allowed' || fact === 'push-target-set';
      expect([held, isMet]).toEqual(isSettled ? ['yes', true] : ['cannot-tell', false]);
      const open = criteria.filter((one) => one.held === 'cannot-tell');
      expect(open.map(({ missing }) => missing)).toEqual(isSettled ? [] : [[fact]]);
      expect(GUIDANCE_SETTLED_BY).toHaveProperty(fact);
    },
  );

  test('a ratio that lies on both sides of the line cannot be told', () => {
    const { criteria } = start({ ...ready, 'side-ratio': known(0.85, { low: 0.79, high: 0.9 }) });
    expect(criteria.find((one) => one.criterion.code === 'ratio')).toMatchObject({
      held: 'cannot-tell',
      missing: [],
      between: ['side-ratio'],
    });
  });

  test('a comparison that is not allowed, and a target that was not set, are not asked for', () => {
    const rest = without(ready, 'side-ratio', 'push-of-target');
    const found = start({ ...rest, 'ratio-allowed': 'no', 'push-target-set': 'no' });
    expect(found.held).toBe('yes');
    expect(found.criteria.filter(({ applies }) => applies === 'no').map((one) => one.criterion.code)).toEqual([
      'ratio',
      'push',
    ]);
  });

  test('one that is not met is a no, whatever is open beside it', () => {
    expect(start({ ...ready, 'valid-raises': 5, 'days-stable': { missing: 'x' } }).held).toBe('no');
  });

  test('an irritability that was not graded is not taken to be anything here', () => {
    expect(start(without(ready, 'irritability')).criteria.find((one) => one.criterion.code === 'low-grade')?.held).toBe(
      'cannot-tell',
    );
  });
});

describe('before going on alone', () => {
  test('everything at its limit is met', () => {
    expect(whole(full).isMet).toBe(true);
  });

  test.each([
    ['days-usual-training', 13, 'usual-training'],
    ['worst-morning-lately', 1.01, 'usual-training'],
    ['questionnaire-changed', 'no', 'questionnaire'],
    ['endurance-in-reference', 'no', 'endurance'],
    ['strength-in-reference', 'no', 'strength'],
    ['side-ratio', known(0.8, { low: 0.7, high: 0.899 }), 'sides'],
  ])('%s just past its limit is not met', (fact, value, code) => {
    const { held, criteria } = whole({ ...full, [fact]: value });
    expect([held, criteria.filter((one) => one.held === 'no').map((one) => one.criterion.code)]).toEqual([
      'no',
      [code],
    ]);
  });

  test('both legs sore: no comparison of sides is asked for', () => {
    const rest = without(full, 'side-ratio');
    expect(whole({ ...rest, 'ratio-allowed': 'no' }).held).toBe('yes');
    expect(whole(rest).held).toBe('cannot-tell');
  });

  test('what is kept up is one to two times a week, for half a year at least', () => {
    expect([KEEP_UP.leastPerWeek.value, KEEP_UP.mostPerWeek.value, KEEP_UP.months.value]).toEqual([1, 2, 6]);
  });
});

test('a list that cannot be told is a missing answer to the rules, and never a no', () => {
  expect(criteriaFact(start(ready), '2026-03-01')).toEqual({
    value: 'yes',
    from: { what: 'criteria', day: '2026-03-01' },
  });
  expect(criteriaFact(start({ ...ready, 'valid-raises': 1 }), null)).toMatchObject({ value: 'no' });
  expect(criteriaFact(start({}), null)).toEqual({ missing: 'cannot-tell' });
});

test('a criterion that asks about something that is not in the table is refused', () => {
  expect(() => judgeCriteria(START_RUNNING, 'left', madeFacts(ready), factTable([]))).toThrow('unknown-fact');
});

test('every criterion is common practice and names the number that it holds against', () => {
  for (const { mark, numbers } of [...START_RUNNING, ...FULL_RETURN]) {
    expect(mark).toBe('common-practice');
    for (const one of Object.values(numbers)) expect(one.source.length).toBeGreaterThan(5);
  }
});
