import { clinicRules, numbersInUse, type OwnNumber, painLimitOf } from '@surae/guidance';
import { COMPARISON_RULES, GUIDANCE_RULES, RULE_NUMBER_BOUNDS, RUNNING_NUMBERS } from '@surae/shared';
import { expect, test } from 'vitest';

const published = new Map(GUIDANCE_RULES.flatMap(({ numbers }) => Object.values(numbers)).map((one) => [one.id, one]));

function own(number: string, value: number): OwnNumber {
  const { unit, value: was } = published.get(number)!;
  return { number, unit, published: was, value, reason: 'our people', by: 'K4', day: '2026-03-02' };
}

test('as published every number is the published one, the same object where rules hold it', () => {
  const { running, painMost, painMostIrritable } = numbersInUse(GUIDANCE_RULES);
  expect(running).toEqual(RUNNING_NUMBERS);
  expect([painMost, painMostIrritable]).toEqual([COMPARISON_RULES.painMost, COMPARISON_RULES.painMostIrritable]);
  // without any rule too
  expect(numbersInUse([]).running).toEqual(RUNNING_NUMBERS);
});

// whatever number of a run or of pain a clinic can change counts where it is reckoned with, and not in the rule alone
const reckoned = [...Object.values(RUNNING_NUMBERS), COMPARISON_RULES.painMost, COMPARISON_RULES.painMostIrritable];
const changeable = RULE_NUMBER_BOUNDS.filter(({ number }) => reckoned.some(({ id }) => id === number));

test('numbers of a run that a clinic can change: share, window, both floors, days between; and both limits of pain', () => {
  expect(changeable.map(({ number }) => number).sort()).toEqual([
    'comparison.pain-most',
    'comparison.pain-most-irritable',
    'guidance.run-days-between',
    'guidance.run-floor-time',
    'guidance.run-floor-way',
    'guidance.run-growth',
    'guidance.run-window',
  ]);
});

test.each(changeable.map(({ number, least, most }) => [number, published.get(number)!.value === least ? most : least]))(
  '%s of a clinic, %d, counts, with its source',
  (number, value) => {
    const { rules, notUsed } = clinicRules(GUIDANCE_RULES, [own(number, value)]);
    expect(notUsed).toEqual([]);
    const { running, painMost, painMostIrritable } = numbersInUse(rules);
    const all = [...Object.values(running), painMost, painMostIrritable];
    const held = all.filter(({ id }) => id === number);
    expect(held).toMatchObject([{ value, mark: 'common-practice' }]);
    expect(held[0]?.source).toMatch(/^chosen by the clinic \(K4, 2026-03-02\); before: /);
    // and no other one moved
    const before = numbersInUse(GUIDANCE_RULES);
    const was = [...Object.values(before.running), before.painMost, before.painMostIrritable];
    expect(all.filter(({ id }) => id !== number)).toEqual(was.filter(({ id }) => id !== number));
  },
);

test('a limit of pain is that of the grade', () => {
  const { rules } = clinicRules(GUIDANCE_RULES, [
    own('comparison.pain-most', 4),
    own('comparison.pain-most-irritable', 2),
  ]);
  const numbers = numbersInUse(rules);
  expect([null, 'low', 'moderate', 'high'].map((grade) => painLimitOf(grade as 'low' | null, numbers))).toEqual([
    4, 4, 4, 2,
  ]);
});
