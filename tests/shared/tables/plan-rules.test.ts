import { INSERTION_LOWEST, PLAN_BOUNDS, PLAN_OPEN_LINES, PLAN_RULES, SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';

test('what a lock stands against is never gone over, and the rest with a reason alone', () => {
  const never = Object.entries(PLAN_RULES).flatMap(([code, { override }]) => (override === 'never' ? [code] : []));
  expect(never).toEqual(['safety-lock', 'sudden-loss']);
  expect(PLAN_RULES['rupture-first'].override).toBe('with-reason');
});

test('a tendon that is sore at the heel bone goes no lower than level', () => {
  expect(INSERTION_LOWEST).toMatchObject({ value: 0, unit: 'deg' });
});

test('the lines that leave a plan open are on the safety list, and of those the one of zero raises alone', () => {
  expect(PLAN_OPEN_LINES.map(({ line }) => line)).toEqual(['safety.zero-raises']);
  for (const { line } of PLAN_OPEN_LINES) expect(SAFETY_LIST.map(({ id }) => id)).toContain(line);
});

test.each(Object.entries(PLAN_BOUNDS))(
  '%s is reached from where it begins, and both ends by whole presses',
  (_, step) => {
    const { least, most, by, begin } = step;
    expect(least).toBeLessThanOrEqual(begin);
    expect(begin).toBeLessThanOrEqual(most);
    expect((begin - least) % by).toBe(0);
    expect((most - least) % by).toBe(0);
  },
);
