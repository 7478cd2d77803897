import { EXERCISE_HOW_WORDS, EXERCISE_WORDS, EXERCISES, PLAN_BOUNDS } from '@surae/shared';
import { expect, test } from 'vitest';

test('the places of the exercises are those that codes carry home', () => {
  // changed at its end alone: a code that was given before counts these places
  expect(EXERCISES.map(({ code }) => code)).toEqual([
    'seated-raise',
    'two-leg-hold',
    'one-leg-hold',
    'two-leg-raise',
    'one-leg-lowering',
    'one-leg-raise',
    'bent-knee-raise',
    'step-raise',
    'loaded-one-leg-raise',
    'calf-stretch',
    'quick-rebounds',
    'one-leg-hops',
    'forward-hops',
    'two-leg-hops',
    'rope-skipping',
    'leg-press-raise',
  ]);
});

test('each has a name and a way of doing it, and no words are left over', () => {
  const codes = EXERCISES.map(({ code }) => code);
  expect(Object.keys(EXERCISE_WORDS)).toEqual(codes);
  expect(Object.keys(EXERCISE_HOW_WORDS)).toEqual(codes);
});

test.each(EXERCISES.map((one) => [one.code, one] as const))('%s begins from numbers that presses can set', (_, one) => {
  const { begin, surface, lowestDeg, beginDeg, presses, move } = one;
  const set = { ...begin, ...begin.tempo, lowestFootDeg: beginDeg };
  for (const [name, step] of Object.entries(PLAN_BOUNDS)) {
    const value = (set as Readonly<Record<string, unknown>>)[name];
    if (typeof value !== 'number') continue;
    expect(value, name).toBeGreaterThanOrEqual(step.least);
    expect(value, name).toBeLessThanOrEqual(step.most);
    expect((value - step.least) % step.by, name).toBe(0);
  }
  // a heel goes below the toes on a step or in a stretch alone, and both press on the tendon at the heel bone
  expect(beginDeg).toBeGreaterThanOrEqual(lowestDeg);
  expect(lowestDeg < 0).toBe(surface === 'step' || move === 'stretch');
  expect(presses !== null).toBe(lowestDeg < 0);
  // repetitions or seconds, never both and never neither
  expect(begin.repetitions === null).toBe(begin.holdS !== null);
  expect(begin.holdS !== null).toBe(move === 'hold' || move === 'stretch');
});
