import {
  ExchangeError,
  type Handout,
  handoutCode,
  handoutOfCode,
  isListed,
  openedCode,
  sealedCode,
  wordsHome,
} from '@surae/exchange';
import { EXERCISES, PLAN_ADVICE_CHOICES, RUN_WHY_CHOICES } from '@surae/shared';
import { expect, test } from 'vitest';
import { homeExercise } from '../../support/home-lines.ts';

const bare: Handout = {
  day: '2026-11-29',
  asked: 'both',
  usual: { left: null, right: null, stiffness: null },
  contact: null,
  lines: [],
  legs: { left: null, right: null },
  plan: [],
  planKey: 7,
  series: 0,
  pushes: null,
  weeks: [],
};

test('the places of advice and reasons are those that codes carry home', () => {
  // changed at their end alone
  expect(Object.keys(PLAN_ADVICE_CHOICES)).toEqual([
    'go-on',
    'less-running',
    'no-hills',
    'no-jumps',
    'heel-lift',
    'short-breaks',
    'floor-only',
    'no-stretch',
    'cycle-swim',
    'ask-prescriber',
    'test-again',
    'shorter-standing',
    'no-ladders',
  ]);
  expect(Object.keys(RUN_WHY_CHOICES)).toEqual(['first-runs', 'longest-run', 'sore-now', 'step-by-step']);
});

test('what no list of this version holds is of no list', () => {
  expect(isListed({ of: 'exercise', code: 'one-leg-raise' })).toBe(true);
  expect(isListed({ of: 'exercise', code: 'of-tomorrow' })).toBe(false);
  // advice is on a list of its own
  expect(isListed({ of: 'advice', code: 'one-leg-raise' })).toBe(false);
  expect(isListed({ of: 'words', code: null })).toBe(false);
});

function refusal(bytes: readonly number[]): unknown {
  try {
    handoutOfCode(sealedCode(Uint8Array.from(bytes)));
    return null;
  } catch (error) {
    return error instanceof ExchangeError ? error.code : error;
  }
}

test('an exercise that a newer version added is refused as newer, and a pain or an angle that is none as damaged', () => {
  const line = homeExercise('seated-raise', { tempo: null, load: null, until: null, painLimit: 9 });
  const bytes = [...openedCode(handoutCode({ ...bare, plan: [line] }))];
  // without the number of the series, pushes and weeks, which stand behind the plan
  const head = openedCode(handoutCode(bare)).length - 3;
  // kind, leg, day in two bytes, last day, pain limit, place on the list
  const [pain, place] = [head + 5, head + 6];
  expect(refusal(bytes)).toBeNull();
  expect(refusal(bytes.with(place, EXERCISES.length))).toBe('newer-version');
  expect(refusal(bytes.with(pain, 12))).toBe('bad-file');
  const angle = bytes.lastIndexOf(91);
  expect(refusal(bytes.with(angle, 182).toSpliced(angle + 1, 0, 1))).toBe('bad-file');
});

test('a line of words is what version 1 knew of a line, and nothing beside it', () => {
  expect(Object.values(wordsHome('Holds', 'left', bare.day)).filter((value) => value !== null)).toEqual([
    'words',
    'Holds',
    'left',
    bare.day,
  ]);
});
