import { expect, test } from 'vitest';
import { designAnswer } from '../../../packages/study/src/design/design-answer.ts';
import type { DesignId } from '../../../packages/study/src/design/design-question.ts';
import { DESIGN_QUESTIONS } from '../../../packages/study/src/design/design-request.ts';
import { requestOf } from '../../support/told-design.ts';

type Given = Parameters<typeof requestOf>[1];

const needed = (id: DesignId, given: Given): number | null => designAnswer(requestOf(id, given)).cases.expected.count;

test.each<[string, DesignId, Given, number]>([
  // Cohen (1988), table 2.4.1 (from memory)
  ['half a deviation between groups', 'groups', { difference: 0.5, sd: 1 }, 64],
  ['the same with 90 %', 'groups', { difference: 0.5, sd: 1, power: 0.9 }, 86],
  // Cohen (1988) (from memory): 34 pairs for half a deviation of the differences
  ['half a deviation of pairs', 'paired', { difference: 0.5, 'sd-change': 1 }, 34],
  [
    'a correlation of a half makes the differences spread as the values do',
    'paired',
    { difference: 0.5, sd: 1, correlation: 0.5 },
    34,
  ],
  // sd of the differences is root 2 times the error of measurement
  ['an error of measurement', 'paired', { difference: 0.5, sem: Math.SQRT1_2 }, 34],
  ['not worse by half a deviation', 'groups-not-worse', { margin: 0.5, sd: 1 }, 64],
  // table of factors for the upper bound: 1.30 at 37 people tested twice
  ['an error known to 30 %', 'error', { above: 0.3 }, 37],
  ['a correlation above another', 'icc-above', { icc: 0.8, least: 0.6 }, 39],
  // 1.96 root 2 2.25 = 6.24; over root 3 it is 3.60
  ['a change of 4 repetitions', 'change', { change: 4, sem: 2.25 }, 3],
])('%s: %s', (_, id, given, count) => {
  expect(needed(id, given)).toBe(count);
});

test('no smaller number attains what was wished', () => {
  const given: Partial<Record<DesignId, Given>> = {
    groups: { difference: 3, sd: 5, legs: 2, 'legs-alike': 0.6 },
    mean: { within: 2, sd: 5 },
    limits: { within: 2, 'sd-change': 3 },
    icc: { width: 0.2, icc: 0.85 },
  };
  for (const [id, told] of Object.entries(given)) {
    const { request, cases } = designAnswer(requestOf(id as DesignId, told));
    const { attained, goal, meets } = request.question;
    const { values, count } = cases.expected;
    const isMet = (people: number): boolean =>
      meets === 'at-least' ? attained(people, values) >= values[goal] : attained(people, values) <= values[goal];
    expect([id, isMet(count!), isMet(count! - 1)]).toEqual([id, true, false]);
  }
});

test('those who drop out are asked as well, in each group', () => {
  const { expected } = designAnswer(requestOf('groups', { difference: 0.5, sd: 1, 'drop-out': 0.2 })).cases;
  expect([expected.count, expected.recruited]).toEqual([64, 160]);
  expect(
    designAnswer(requestOf('paired', { difference: 0.5, 'sd-change': 1, 'drop-out': 0.1 })).cases.expected.recruited,
  ).toBe(38);
});

test('the ends of what is not known are taken together and one at a time', () => {
  const { cases, singles } = designAnswer(requestOf('groups', { difference: [2, 3, 4], sd: [4, 5, 7] }));
  const one = (difference: number, sd: number): number => needed('groups', { difference, sd })!;
  expect([cases.fewest.count, cases.expected.count, cases.most.count]).toEqual([one(4, 4), one(3, 5), one(2, 7)]);
  expect(singles.map(({ input, end, need }) => [input, end, need.count])).toEqual([
    ['difference', 'low', one(2, 5)],
    ['difference', 'high', one(4, 5)],
    ['sd', 'low', one(3, 4)],
    ['sd', 'high', one(3, 7)],
  ]);
});

test('beyond a hundred thousand there is no number, and never one that could be read', () => {
  const { cases, curve } = designAnswer(requestOf('groups', { difference: 0.001, sd: [1, 5, 6] }));
  expect(cases.expected).toMatchObject({ count: null, recruited: null, attained: null });
  expect(curve.every(({ attained }) => Number.isFinite(attained.expected))).toBe(true);
});

test('the answer lies on its curve, and the curve goes on beyond it', () => {
  const { cases, curve } = designAnswer(requestOf('icc', { width: 0.2, icc: [0.7, 0.85, 0.9] }));
  const counts = curve.map(({ count }) => count);
  expect(counts).toContain(cases.expected.count);
  expect(counts.at(-1)!).toBeGreaterThan(cases.most.count!);
  expect(counts).toEqual([...counts].sort((a, b) => a - b));
});

test('every question has an answer in every way', () => {
  const usual: Given = {
    difference: 3,
    margin: 4,
    sd: 5,
    'sd-change': 4,
    correlation: 0.7,
    sem: 2.25,
    within: 2,
    width: 0.2,
    icc: 0.85,
    least: 0.6,
    change: 4,
    above: 0.3,
  };
  for (const question of DESIGN_QUESTIONS) {
    const own = Object.fromEntries(
      Object.entries(usual).filter(([key]) => question.inputs.some((input) => input.key === key)),
    );
    const answer = designAnswer(requestOf(question.id, own));
    expect(answer.request.question).toBe(question);
    expect(answer.cases.expected.count).toBeGreaterThan(0);
  }
});
