import type { DoneAtHome, RunAtHome } from '@surae/exchange';
import { expect, test } from 'vitest';
import { keepAfter, keepDone, keepRun, keptDiary } from '../../../apps/dashboard/src/home/kept-diary.ts';
import { keepMorning } from '../../../apps/dashboard/src/home/kept-mornings.ts';
import { MapMemory } from '../../support/device-memory.ts';

const done = (day: string, sets: number, place = 0): DoneAtHome => ({
  day,
  planKey: 7,
  place,
  code: 'one-leg-raise',
  side: 'right',
  sets,
  pain: 2,
});
const run: RunAtHome = {
  day: '2026-11-28',
  durationS: 300,
  distanceM: null,
  cadencePerMin: null,
  left: null,
  right: 1,
};

test('sets of a line on a day are kept once, the last word counts, and none is nothing', () => {
  const memory = new MapMemory();
  keepDone(memory, done('2026-11-30', 1));
  keepDone(memory, done('2026-11-30', 2));
  keepDone(memory, done('2026-11-29', 3));
  keepDone(memory, done('2026-11-30', 1, 1));
  expect(keptDiary(memory).done).toEqual([done('2026-11-29', 3), done('2026-11-30', 2), done('2026-11-30', 1, 1)]);
  keepDone(memory, done('2026-11-30', 0));
  expect(keptDiary(memory).done.map(({ day, place }) => [day, place])).toEqual([
    ['2026-11-29', 0],
    ['2026-11-30', 1],
  ]);
});

test('a plan that was given anew does not mix with the one before', () => {
  const memory = new MapMemory();
  keepDone(memory, done('2026-11-30', 1));
  keepDone(memory, { ...done('2026-11-30', 2), planKey: 8 });
  expect(keptDiary(memory).done).toHaveLength(2);
});

test('several runs of a day stay, in the order of their days, beside mornings and exercises', () => {
  const memory = new MapMemory();
  keepMorning(memory, { day: '2026-11-30', left: null, right: 3, stiffness: 'none' });
  keepDone(memory, done('2026-11-30', 1));
  keepRun(memory, { ...run, day: '2026-11-30' });
  keepRun(memory, run);
  keepRun(memory, run);
  const { mornings, done: sets, runs } = keptDiary(memory);
  expect([mornings.length, sets.length]).toEqual([1, 1]);
  expect(runs.map(({ day }) => day)).toEqual(['2026-11-28', '2026-11-28', '2026-11-30']);
});

test('what cannot be read is none, and is written over', () => {
  const memory = new MapMemory();
  memory.setItem('surae.diary', 'torn');
  expect(keptDiary(memory)).toEqual({ mornings: [], done: [], runs: [], after: [] });
  keepRun(memory, run);
  expect(keptDiary(memory).runs).toEqual([run]);
});

test('pain after the exercises of a day is kept once, taken back, and is nothing without an exercise', () => {
  const memory = new MapMemory();
  keepDone(memory, done('2026-11-29', 3));
  keepDone(memory, done('2026-11-30', 3));
  keepAfter(memory, { day: '2026-11-30', left: null, right: 4 });
  keepAfter(memory, { day: '2026-11-29', left: 0, right: 2 });
  keepAfter(memory, { day: '2026-11-30', left: null, right: 5 });
  keepRun(memory, run);
  expect(keptDiary(memory).after).toEqual([
    { day: '2026-11-29', left: 0, right: 2 },
    { day: '2026-11-30', left: null, right: 5 },
  ]);
  keepAfter(memory, { day: '2026-11-29', left: null, right: null });
  expect(keptDiary(memory).after.map(({ day }) => day)).toEqual(['2026-11-30']);
  keepDone(memory, done('2026-11-30', 0));
  expect(keptDiary(memory).after).toEqual([]);
});
