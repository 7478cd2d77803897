import type { LegDayDone } from '@surae/guidance';
import { LOAD_WORDS } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { loadDiary } from '../../../apps/dashboard/src/course/load-diary.ts';
import {
  diaryLeads,
  diaryRest,
  diaryRows,
  exerciseName,
  legDayWords,
  weekRows,
} from '../../../apps/dashboard/src/course/load-diary-words.ts';
import { advisedPerson, inMarch, madeDone } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);
const done: LegDayDone = { entries: 1, asRaiseS: [270, 270], unweighedS: 0, amountsUnknown: 0 };
const items = [
  madeExercise('one-leg-raise', { side: 'right', from: inMarch(10) }),
  madeExercise('seated-raise', { side: 'right', from: inMarch(10), perWeek: null }),
  madeExercise('step-raise', { side: 'right', from: inMarch(10) }),
  madeExercise('loaded-one-leg-raise', { side: 'right', from: inMarch(10), load: { value: 10, unit: 'kg' } }),
];
const diary = loadDiary(
  advisedPerson({
    plans: [{ day: 10, items }],
    done: [
      ...[25, 27, 29].map((day) => madeDone('item-10-0', day, { sets: 3, repetitions: 15 })),
      madeDone('item-10-1', 27, { sets: 2, repetitions: 15 }),
      madeDone('item-10-3', 27, { sets: 2, repetitions: 15 }),
      madeDone(null, 30),
    ],
  }),
  today,
)!;

describe('a day of a leg', () => {
  test.each<[LegDayDone | null, string]>([
    [null, 'not written down'],
    [done, '4.5 min'],
    [{ ...done, unweighedS: 60 }, '4.5 min, and 1 min, load not known'],
    [{ ...done, asRaiseS: null, unweighedS: 60 }, '1 min under tension, load not known'],
    [{ ...done, asRaiseS: null, amountsUnknown: 1 }, 'done, how much is not known'],
    [{ ...done, amountsUnknown: 1 }, '4.5 min, and more, how much is not known'],
  ])('%o is "%s"', (told, text) => {
    expect(legDayWords({ done: told })).toBe(text);
  });
});

test('the lead says how many days are known, and that the others are neither done nor left out', () => {
  expect(diaryLeads(diary)).toEqual([
    'Left: nothing is written down for any of 22 days. They are unknown: neither done nor left out.',
    'Right: something is written down for 4 of 22 days. The others are unknown: neither done nor left out.',
  ]);
});

test('days in a row of which nothing is known are one row that says so, and no row holds a zero', () => {
  const rows = diaryRows(diary);
  expect(rows[0][0]).toBe('31 Mar 2026');
  expect(rows.at(-1)).toEqual(['10 Mar to 24 Mar 2026: 15 days', ...Array<string>(3).fill(LOAD_WORDS.unknown.text)]);
  for (const [, ...cells] of rows) for (const cell of cells) expect(cell).not.toMatch(/^0/);
  expect(rows.find(([when]) => when === '30 Mar 2026')?.[2]).toBe('done, how much is not known');
});

test('a week says what is planned, written down and unknown, and a load only where it is known', () => {
  const newest = weekRows(diary.weeks.slice(0, 1));
  expect(newest.map(([, ...cells]) => cells)).toEqual([
    ['3 planned, 3 written down, 0 unknown', '13.5 min of 13.5 min'],
    ['1 written down; how often is not said', 'at least 0.5 to 0.6 min'],
    [
      '3 planned, 0 written down, 3 unknown',
      'cannot tell: how this exercise loads the tendon was not read in any paper',
    ],
    ['3 planned, 1 written down, 2 unknown', 'cannot tell: the weight or the body mass is not known'],
  ]);
  expect(newest[0][0]).toBe('25 Mar to 31 Mar: Heel raises on one leg, right');
  const [, second] = diary.weeks;
  expect(weekRows([second])[0].slice(1)).toEqual([
    '3 planned, 0 written down, 3 unknown',
    'cannot tell: nothing is written down',
  ]);
});

test('every load has its source and its mark in words, and one that is not known says so', () => {
  const rest = diaryRest(diary);
  expect(rest[0]).toBe(
    'Heel raises on one leg: as much as a raise. Ours: the same weight and lever. Ours: a definition.',
  );
  expect(rest[1]).toMatch(/^Seated heel raises: 0\.17 to 0\.19 times a raise\. Baxter 2021 .*From memory; not checked/);
  expect(rest[2]).toBe('Heel raises on one leg, at the edge of a step: not known beside a raise, and in no sum.');
  expect(rest).toContain(LOAD_WORDS['rest-mass'].text);
  expect(rest.at(-1)).toContain('of no line of the plan: 1.');
  expect(diaryRest({ ...diary, bodyMassKg: null })).toContain(LOAD_WORDS['rest-mass-open'].text);
});

test('an exercise that is not in the list keeps its own words', () => {
  expect(exerciseName('one-leg-raise', 'x')).toBe('Heel raises on one leg');
  expect(exerciseName(null, 'stairs')).toBe('stairs');
  expect(exerciseName('of-tomorrow', 'of tomorrow')).toBe('of tomorrow');
});
