import { FIXED_NUMBERS, GUIDANCE_RULES, RULE_NUMBER_BOUNDS, RULE_NUMBER_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';

const numbers = [
  ...new Map(GUIDANCE_RULES.flatMap((one) => Object.values(one.numbers)).map((one) => [one.id, one])).values(),
];
const bounded = new Map(RULE_NUMBER_BOUNDS.map((one) => [one.number, one]));

test('every number of the rules has bounds for a change or a reason to stay, and not both; neither list has another one', () => {
  for (const { id } of numbers) expect([bounded.has(id), FIXED_NUMBERS.has(id)].filter(Boolean), id).toHaveLength(1);
  const ids = new Set(numbers.map(({ id }) => id));
  expect([...bounded.keys(), ...FIXED_NUMBERS.keys()].filter((id) => !ids.has(id))).toEqual([]);
});

test('what is published lies on a step between the bounds, in their unit, and has a name', () => {
  for (const { id, value, unit } of numbers.filter((one) => bounded.has(one.id))) {
    const { least, most, by, unit: own } = bounded.get(id)!;
    expect([own, value >= least, value <= most], id).toEqual([unit, true, true]);
    for (const to of [value, most]) expect((to - least) / by, id).toBeCloseTo(Math.round((to - least) / by), 6);
    expect(Object.keys(RULE_NUMBER_WORDS), id).toContain(id);
  }
  expect(Object.keys(RULE_NUMBER_WORDS).sort()).toEqual([...bounded.keys()].sort());
});

test('numbers that follow on each other cannot change places', () => {
  const order = [
    ['guidance.raises-ten', 'guidance.raises-twenty'],
    ['guidance.load-raises-six', 'guidance.load-raises-sixteen'],
    ['guidance.load-raises-sixteen', 'guidance.load-raises-most'],
    ['guidance.load-trial-least', 'guidance.load-trial-most'],
    ['guidance.load-kg-least', 'guidance.load-kg-most'],
    ['guidance.reduce-least', 'guidance.reduce-most'],
    ['guidance.heel-lift-least', 'guidance.heel-lift-most'],
    ['guidance.standing-lift-least', 'guidance.standing-lift-most'],
    ['guidance.running-pause-least', 'guidance.running-pause-most'],
    ['guidance.running-less-least', 'guidance.running-less-most'],
    ['guidance.running-flat-least', 'guidance.running-flat-most'],
  ] as const;
  for (const [first, second] of order) {
    expect(bounded.get(first)!.most, first).toBeLessThan(bounded.get(second)!.least);
  }
});

test('limits that protect go to the careful side alone', () => {
  const value = (id: string): number => numbers.find((one) => one.id === id)!.value;
  for (const id of ['comparison.pain-most', 'comparison.pain-most-irritable', 'comparison.pain-rise-most']) {
    expect(bounded.get(id)!.most, id).toBe(value(id));
  }
  for (const id of ['guidance.impact-days', 'guidance.programme-least', 'guidance.recovery-days-high']) {
    expect(bounded.get(id)!.least, id).toBe(value(id));
  }
});
