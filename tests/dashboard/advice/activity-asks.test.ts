import { propose } from '@surae/guidance';
import {
  ASKED_CHOICES,
  ASKED_FACTS,
  ASKED_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  GUIDANCE_SETTLED_BY,
  RETURN_SENTENCES,
  START_RUNNING,
} from '@surae/shared';
import { expect, test } from 'vitest';
import { activityAsks } from '../../../apps/dashboard/src/advice/activity-asks.ts';
import { asksFor } from '../../../apps/dashboard/src/advice/fact-asks.ts';
import { madeFacts } from '../../support/guidance-facts.ts';
import { madeVisit } from '../../support/made-visit.ts';

const ofActivity = ASKED_FACTS.filter(({ at }) => at === 'activity');
const factsOf = (asks: ReturnType<typeof activityAsks>) => asks.map(({ fact }) => fact);

test('what nobody told is asked of the person and of the leg, each at its place', () => {
  const given = madeFacts({});
  expect(factsOf(activityAsks(given, madeVisit(), null))).toEqual(['runs', 'hills-asked', 'job-on-feet']);
  expect(factsOf(activityAsks(given, madeVisit(), null, ['job-on-feet']))).toEqual(['job-on-feet']);
  expect(factsOf(activityAsks(given, madeVisit(), 'left'))).toEqual([
    'pain-brisk-walk',
    'pain-twenty-hops',
    'rise-after-hops',
  ]);
});

test('what a log tells is not asked, and what was told in this visit stays to be taken back', () => {
  const known = madeFacts({}, {}, { runs: 'yes' });
  expect(factsOf(activityAsks(known, madeVisit(), null, ['runs']))).toEqual([]);
  const visit = { ...madeVisit(), factsTold: [{ fact: 'runs', leg: null, answer: 'no', at: '2026-03-01' }] };
  expect(activityAsks(known, visit, null, ['runs'])).toMatchObject([{ fact: 'runs', answer: 'no' }]);
});

test('every question has words for itself, for how it is found out and for its answers', () => {
  for (const { fact, answers } of ofActivity) {
    expect(ASKED_WORDS).toHaveProperty(fact);
    expect(GUIDANCE_SETTLED_BY).toHaveProperty(fact);
    for (const { code } of answers) expect(ASKED_CHOICES).toHaveProperty(code);
  }
});

test('none of it is asked beside exercises', () => {
  const given = madeFacts({ irritability: 'low' }, {}, { runs: 'yes' });
  const now = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
  const asked = asksFor({ given, rules: GUIDANCE_RULES, visit: madeVisit() }, now, null);
  expect(asked.filter(({ fact }) => ofActivity.some((one) => one.fact === fact))).toEqual([]);
});

test('the answer of least pain meets its point, and the next one does not', () => {
  const limits = { 'pain-brisk-walk': 'brisk-walk', 'pain-twenty-hops': 'hops' } as const;
  for (const [fact, code] of Object.entries(limits)) {
    const { numbers } = START_RUNNING.find((one) => one.code === code)!;
    const [least, next] = ofActivity.find((one) => one.fact === fact)!.answers.map(({ value }) => Number(value));
    expect(least).toBe(numbers['pain']?.value);
    expect(next).toBeGreaterThan(least);
    expect(RETURN_SENTENCES).toHaveProperty(code);
  }
});
