import { EXERCISES, PLAN_BOUNDS, type PlanBoundName } from '@surae/shared';
import { expect, test } from 'vitest';
import { numberWords } from '../../../apps/dashboard/src/plan/number-words.ts';
import {
  planLegs,
  planLineText,
  planName,
  planPieces,
  rangeWords,
  setsWords,
} from '../../../apps/dashboard/src/plan/plan-words.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';

test('an exercise says what, how much, how slowly, how far down, how heavy, how sore, how often and until when', () => {
  const item = madeExercise('one-leg-raise', { side: 'right', load: { value: 7.5, unit: 'kg' }, until: '2026-03-29' });
  expect(planLineText(item)).toBe(
    'Heel raises on one leg: right leg, 3 sets of 15, 3 s up and 3 s down, with 7.5 kg, heel never below the floor line, 60 s rest between sets, pain up to 5 of 10, 3 times a week, until 29 Mar 2026',
  );
});

test('what was left open is not said', () => {
  const item = madeExercise('one-leg-raise', {
    tempo: { upS: 3, topS: null, downS: null },
    sets: null,
    restS: null,
    painLimit: null,
    perWeek: null,
    lowestFootDeg: null,
  });
  expect(planPieces(item)).toEqual(['each leg in turn', '15 times']);
  expect(planPieces(madePlanItem({ side: 'left' }))).toEqual(['left leg']);
});

test('how far down is said from the floor line', () => {
  const range = (lowestFootDeg: number): readonly string[] => rangeWords({ of: 'exercise', lowestFootDeg });
  expect([0, 10, -15].flatMap(range)).toEqual([
    'heel never below the floor line',
    'heel never lower than 10° above the floor line',
    'heel down to 15° below the floor line',
  ]);
});

test('a limit for runs, and none for now', () => {
  expect(planPieces(madeRunLimit({ daysBetween: 2 }))).toEqual([
    '5 min of running at most',
    'run 1 min and walk 1 min in turn',
    '2 days without a run between two',
    'pain up to 5 of 10',
  ]);
  expect(planPieces(madeRunLimit({ mostS: null, mostM: 2500, runS: null }))[0]).toBe('2.5 km at most');
  expect(planPieces(madeRunLimit({ mostS: 0 }))).toEqual(['no running for now']);
});

test('an exercise of a newer version is told by the words that it was noted with', () => {
  expect(planName(madeExercise('of-tomorrow', { what: 'Something new' }))).toBe('Something new');
  expect(planName(madePlanItem({ of: 'advice', code: 'heel-lift', what: 'x' }))).toBe('Heel lift in the shoe');
  // an exercise on two legs is not done leg by leg
  expect(planLegs(madeExercise('two-leg-raise'))).toBe('both legs');
});

test('no number of any exercise is told by a word that judges, and every number has its unit', () => {
  const texts = EXERCISES.map(({ code }) => planLineText(madeExercise(code, { holdS: 30 })));
  for (const text of texts) for (const word of JUDGING_WORDS) expect(text).not.toMatch(word);
  const told = (Object.keys(PLAN_BOUNDS) as PlanBoundName[]).map((name) => [
    name,
    numberWords({ name, value: PLAN_BOUNDS[name].most }),
    numberWords({ name, value: null }),
  ]);
  expect(told).toEqual([
    ['sets', '20', 'left open'],
    ['repetitions', '50', 'left open'],
    ['holdS', '120 s', 'left open'],
    ['upS', '10 s', 'left open'],
    ['topS', '10 s', 'left open'],
    ['downS', '10 s', 'left open'],
    ['restS', '300 s', 'left open'],
    ['loadKg', '150 kg', 'none'],
    ['lowestFootDeg', '20° above level', 'left open'],
    ['painLimit', '10 of 10', 'left open'],
    ['perWeek', '14', 'left open'],
    ['weeks', '26 weeks', 'no end'],
    ['runMin', '180 min', 'left open'],
    ['runM', '42 km', 'left open'],
    ['daysBetween', '7', 'left open'],
    ['runPartMin', '60 min', 'left open'],
    ['walkPartMin', '10 min', 'left open'],
  ]);
  expect(numberWords({ name: 'lowestFootDeg', value: -5 })).toBe('5° below level');
  expect(numberWords({ name: 'runMin', value: 0 })).toBe('no run');
});

test('holds are told one a set, or as sets of so many', () => {
  const hold = madeExercise('one-leg-hold', { sets: 5, repetitions: null, holdS: 45, tempo: null });
  expect(setsWords(hold)).toEqual(['5 holds of 45 s']);
  expect(setsWords({ ...hold, repetitions: 1 })).toEqual(['5 holds of 45 s']);
  expect(setsWords({ ...hold, repetitions: 4, holdS: 3 })).toEqual(['5 sets of 4 holds of 3 s']);
});
