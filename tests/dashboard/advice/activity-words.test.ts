import { editedRule, numbersInUse, sessionCap } from '@surae/guidance';
import { GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  capWords,
  daysApart,
  goalWords,
  nextWords,
  roomWords,
  runNumberLines,
  timeWords,
  wayWords,
} from '../../../apps/dashboard/src/advice/activity-words.ts';
import { madeExercise, madeRunLimit } from '../../support/plan-items.ts';
import { keptLog, marchDay, runOn } from '../../support/run-logs.ts';

const { running: numbers } = numbersInUse(GUIDANCE_RULES);
const apart = daysApart(GUIDANCE_RULES);
const cap = sessionCap(keptLog(runOn(10, 10, 55)), marchDay(12));
const none = { mostS: null, mostM: null, from: null, cap, ofReturn: null, settledBy: [] };

test('limits are rounded down', () => {
  expect([timeWords(60), timeWords(75), timeWords(120), timeWords(3629)]).toEqual(['1 min', '75 s', '2 min', '60 min']);
  expect([wayWords(999), wayWords(1000), wayWords(6899)]).toEqual(['999 m', '1 km', '6.8 km']);
});

test('the cap names the run that it comes from', () => {
  expect(capWords({ cap, numbers })).toEqual([
    '60 min: 10 % over the longest of the last 30 days, 55 min on 10 Mar 2026.',
    '11 km: 10 % over the longest of the last 30 days, 10 km on 10 Mar 2026.',
  ]);
});

test('a cap that cannot be told says why, and what would settle it', () => {
  const open = sessionCap({ runs: [runOn(10, 10)], kept: [] }, marchDay(12));
  const lines = capWords({ cap: open, numbers });
  expect(lines[0]).toMatch(/^11 km: /);
  expect(lines[1]).toMatch(/of 30 of these days nobody noted/);
  expect(lines[2]).toMatch(/^Ask whether there were runs/);
  const nothing = sessionCap({ runs: [], kept: [] }, marchDay(12));
  expect(capWords({ cap: nothing, numbers })[0]).toBe(
    '5 min, the least that a cap is: no run of the last 30 days is written down.',
  );
});

test('a first session is told in its parts', () => {
  const first = nextWords({ next: { ...none, step: 'first', mostS: 300 }, numbers });
  expect(first).toEqual([
    'Suggestion: a first session of 5 min of running in all, whatever was run before.',
    '5 times 1 min of running, with 1 min to 2 min of walking between.',
  ]);
  const step = nextWords({ next: { ...none, step: 'step', mostS: 1980, mostM: 5500 }, numbers });
  expect(step).toHaveLength(1);
  expect(step[0]).toContain('up to 33 min or 5.5 km, whichever comes first');
  const rest = nextWords({ next: { ...none, step: 'rest', from: marchDay(14) }, numbers });
  expect(rest).toEqual(['Suggestion: no run today; the next one from 14 Mar 2026 on.']);
  const same = nextWords({
    next: { ...none, step: 'same', mostS: 300, settledBy: ['morning', 'runs-of-days'] },
    numbers,
  });
  expect(same[1]).toBe('Ask how the morning after it was.');
  expect(same).toHaveLength(2);
});

const reach = {
  runs: 4,
  longestM: 14_641,
  repeatedM: 12_100,
  held: 'cannot-tell',
  openBy: ['repeats'],
  earliest: marchDay(16),
  earliestRepeated: marchDay(20),
} as const;
const goal = { day: marchDay(18), today: marchDay(11), goal: 'Run 13 km', raceM: 13_000, reach };

test('a goal is told as a range, with what it takes for granted and that it is no forecast', () => {
  const lines = goalWords({ goal, numbers });
  expect(lines[1]).toBe('It cannot be told whether the race of 13 km is within the cap on 18 Mar 2026.');
  expect(lines[2]).toBe(
    'The cap comes to it on 16 Mar 2026 if every step is taken, and on 20 Mar 2026 if 50 % of the runs are repeated.',
  );
  expect(lines[3]).toMatch(/Common practice, no source\.$/);
  expect(lines.at(-1)).toMatch(/no forecast/);
  expect(goalWords({ goal: null, numbers })).toEqual([]);
});

test('a goal that is over, or names no way, has no reach', () => {
  expect(goalWords({ goal: { ...goal, today: marchDay(19), reach: null }, numbers })[1]).toBe(
    'The goal day, 18 Mar 2026, is over.',
  );
  expect(goalWords({ goal: { ...goal, raceM: null, reach: null }, numbers })[1]).toMatch(/names no one way in km/);
});

test('heavy raises and runs that do not fit into a week are told, and those that do are not', () => {
  const heavy = (perWeek: number) => madeExercise('loaded-one-leg-raise', { perWeek });
  expect(roomWords([heavy(3), madeRunLimit()], apart)[0]).toMatch(
    /^Heavy raises 3 times a week leave no room for a run with 2 days/,
  );
  expect(roomWords([heavy(2), madeRunLimit()], apart)[0]).toMatch(/leave room for one run a week.*would allow 3\.$/);
  expect(roomWords([heavy(2), madeRunLimit({ daysBetween: 6 })], apart)).toEqual([]);
  expect(roomWords([heavy(3), madeRunLimit({ mostS: 0 })], apart)).toEqual([]);
  expect([roomWords([heavy(3)], apart), roomWords([madeExercise('one-leg-raise'), madeRunLimit()], apart)]).toEqual([
    [],
    [],
  ]);
});

test('each number of a run has its source, or says that it has none', () => {
  const [own, practice] = runNumberLines(numbers);
  expect(own).toMatch(/^Numbers in it: 10 % over the longest run of 30 days\. Frandsen 2025/);
  expect(practice).toMatch(/a first session of 5 min.*Common practice, no source\.$/);
});

test('where a clinic changed one of them, its own number is said and is no published one', () => {
  const own = GUIDANCE_RULES.map((rule) =>
    rule.code === 'run-cap' ? editedRule(rule, { number: 'growth', value: 0.07, by: 'AB', day: '2026-03-01' }) : rule,
  );
  const { running } = numbersInUse(own);
  const [line] = runNumberLines(running);
  expect(line).toBe('Numbers in it: 7 % over the longest run of 30 days. Common practice, no source.');
  const less = sessionCap(keptLog(runOn(10, 10, 55)), marchDay(12), running);
  expect(capWords({ cap: less, numbers: running })[0]).toBe(
    '58 min: 7 % over the longest of the last 30 days, 55 min on 10 Mar 2026.',
  );
});

test('days between heavy raises and runs are those of the clinic', () => {
  const own = GUIDANCE_RULES.map((rule) =>
    rule.code === 'impact-after-heavy'
      ? editedRule(rule, { number: 'days', value: 4, by: 'AB', day: '2026-03-01' })
      : rule,
  );
  expect([apart, daysApart(own)]).toEqual([2, 4]);
  expect(roomWords([madeExercise('loaded-one-leg-raise', { perWeek: 1 }), madeRunLimit()], daysApart(own))[0]).toMatch(
    /no room for a run with 4 days/,
  );
});
