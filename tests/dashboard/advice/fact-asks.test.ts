import { propose } from '@surae/guidance';
import {
  ASKED_CHOICES,
  ASKED_FACTS,
  ASKED_WORDS,
  GUIDANCE_FACTS,
  GUIDANCE_RULES,
  GUIDANCE_SETTLED_BY,
} from '@surae/shared';
import { expect, test } from 'vitest';
import { asksFor, asksUnderLock } from '../../../apps/dashboard/src/advice/fact-asks.ts';
import { madeFacts } from '../../support/guidance-facts.ts';
import { madeVisit } from '../../support/made-visit.ts';

type Told = Parameters<typeof madeFacts>[0];

/** Two sessions that went as planned, at a level without a flare. */
const well: Told = {
  place: 'mid-portion',
  irritability: 'low',
  'programme-begun': 'yes',
  'valid-raises': 15,
  'pain-single-raise': 1,
  'settles-overnight': 'yes',
  'days-since-flare': 60,
  'days-at-level': 10,
  'repetitions-left': 0,
  ...Object.fromEntries(
    (['last', 'before'] as const).flatMap((which) => [
      [`share-done-${which}`, 1],
      [`pain-during-${which}`, 1],
      [`pain-after-${which}`, 1],
      [`morning-rise-${which}`, 0],
      [`stiffness-rise-${which}`, 0],
      [`stiffness-over-double-${which}`, 0],
      [`exertion-${which}`, 6],
    ]),
  ),
  'last-logged': 'yes',
  'morning-logged': 'yes',
  'told-in-full': 'yes',
  'sessions-logged': 4,
  'morning-pain-last': 1,
  'morning-now': 'no-flare',
  'last-at-dose': 'yes',
  'lowered-since': 'no',
  'week-trend': 'not-rising',
  'planned-two-weeks': 6,
  'left-out-two-weeks': 0,
  'missed-in-row': 0,
  'days-since-session': 1,
  'hard-days': 0,
  'morning-weeks': 6,
  'morning-slope': 0,
  'dose-eased': 'no',
  'days-since-heavy': 3,
};

function asked(left: Told, person: Told = {}, visit = madeVisit()) {
  const given = madeFacts(left, { place: 'no', 'rupture-looked': 'clear' }, person);
  const now = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
  const ground = { given, rules: GUIDANCE_RULES, visit };
  const of = (leg: 'left' | 'right' | null) => asksFor(ground, now, leg).map(({ fact }) => fact);
  return { left: of('left'), person: of(null), locked: asksUnderLock(ground, now) };
}

test('what is asked is what would change the proposal, and nothing else', () => {
  // on the floor with fifteen raises: whether all sets are done decides between the step and waiting
  expect(asked({ ...well, 'level-now': 2 }).left).toEqual(['level-two-met']);
  // at the edge of a step: load is next where there is any
  expect(asked({ ...well, 'level-now': 3, 'range-left': 0 }).left).toEqual(['load-left']);
  // nothing goes up: nothing of what would go up is asked
  expect(asked({ ...well, 'level-now': 3, 'pain-during-last': 8 }).left).toEqual([]);
});

test('the weeks of a schedule are asked where one is done', () => {
  expect(asked({ ...well, 'level-now': 4, 'pain-during-last': 8 }).left).toEqual(['heavy-slow-week']);
});

test('why sessions were missed is asked where it holds the dose', () => {
  expect(asked({ ...well, 'level-now': 2, 'missed-in-row': 3 }).left).toContain('missed-asked');
  expect(asked({ ...well, 'level-now': 2 }).left).not.toContain('missed-asked');
});

test('signs of a rupture are asked where not one raise locks, and not where a line of the list locks all the same', () => {
  const none: Told = { 'valid-raises': 0 };
  expect(asked(none).locked.map(({ fact, leg }) => [fact, leg])).toEqual([['rupture-looked', 'left']]);
  expect(asked(none, { 'safety.clot': 'ticked' }).locked).toEqual([]);
});

test('a standstill and twelve weeks are asked about once they are there', () => {
  const late: Told = { ...well, 'level-now': 2, 'level-two-met': 'no', 'week-step-due': 'no', 'share-six-weeks': 0.9 };
  expect(asked({ ...late, 'days-in-programme': 30 }).left).toEqual([]);
  expect(asked({ ...late, 'days-in-programme': 50 }).left).toEqual(['changed-six-weeks']);
  expect(asked({ ...late, 'days-in-programme': 90 }).left).toEqual(['changed-six-weeks', 'important-change']);
});

test('of the person a rig is asked about where hard holds would fit, and running where somebody runs', () => {
  const calm: Told = {
    irritability: 'low',
    place: 'mid-portion',
    'valid-raises': 15,
    'pain-single-raise': 1,
    'settles-overnight': 'yes',
  };
  expect(asked(calm).person).toEqual(['rig-at-hand']);
  expect(asked({ ...calm, irritability: 'high' }).person).toEqual([]);
  expect(asked({ ...calm, 'pain-single-raise': 4 }).person).toEqual([]);
  expect(asked(calm, { runs: 'yes' }).person).toEqual(['rig-at-hand', 'running-now']);
});

test('what was told stays there with its answer, so that it can be taken back', () => {
  const told = { fact: 'load-left', leg: 'left', answer: 'yes', at: '2026-03-01T09:00:00Z' } as const;
  const visit = { ...madeVisit(), factsTold: [told] };
  expect(asked({ ...well, 'load-left': 'yes', 'level-now': 1 }, {}, visit).left).toContain('load-left');
});

test('every question has its words, how it is found out, and words for each answer', () => {
  for (const { fact, answers } of ASKED_FACTS) {
    expect(Object.keys(ASKED_WORDS), fact).toContain(fact);
    expect(Object.keys(GUIDANCE_SETTLED_BY), fact).toContain(fact);
    for (const { code } of answers) expect(Object.keys(ASKED_CHOICES), fact).toContain(code);
  }
});
