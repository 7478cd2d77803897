import { doseSum } from '@surae/guidance';
import { HEAVY_SLOW, HEAVY_SLOW_EXERCISES, HEAVY_SLOW_LINES, LEVELS, PROGRAMMES } from '@surae/shared';
import { describe, expect, test } from 'vitest';

describe('heavy slow training', () => {
  // Beyer 2015, Am J Sports Med 43:1704: three exercises, six seconds a repetition; arithmetic of its table
  test('repetitions of a session are 135, 108, 120, 96 and 72', () => {
    const each = HEAVY_SLOW.map(({ sets, repetitions }) => sets * repetitions * HEAVY_SLOW_EXERCISES.trial);
    expect(each).toEqual([135, 108, 120, 96, 72]);
  });

  test('time under tension of a session is 810, 648, 720, 576 and 432 s', () => {
    const each = HEAVY_SLOW.map(({ id }) => {
      const [first] = HEAVY_SLOW_LINES[id].map(doseSum);
      return first.sessionTensionS!.map((one) => one * HEAVY_SLOW_EXERCISES.trial);
    });
    expect(each).toEqual([810, 648, 720, 576, 432].map((one) => [one, one]));
  });

  test('every week from 1 to 12 has one row, and the loads grow', () => {
    const weeks = HEAVY_SLOW.flatMap(({ weeks: [from, to] }) =>
      Array.from({ length: to - from + 1 }, (_, i) => from + i),
    );
    expect(weeks).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
    const loads = HEAVY_SLOW.map(({ repetitions }) => repetitions);
    expect(loads).toEqual([15, 12, 10, 8, 6]);
  });

  test('the weeks that the quoting table leaves out say that they are from memory', () => {
    expect(HEAVY_SLOW.map(({ mark }) => mark)).toEqual([
      'second-hand',
      'second-hand',
      'second-hand',
      'from-memory',
      'second-hand',
    ]);
  });
});

test('fifteen repetitions of six seconds are 90 s under tension in a set', () => {
  const line = {
    sets: [3, 3],
    repetitions: [15, 15],
    holdS: null,
    tempo: { upS: 3, topS: 0, downS: 3 },
    perWeek: [7, 7],
  } as const;
  expect(doseSum(line)).toEqual({
    repetitions: [45, 45],
    setTensionS: [90, 90],
    sessionTensionS: [270, 270],
    repetitionsPerWeek: [315, 315],
  });
});

test('lowering twice a day is 180 a day and 15 120 in twelve weeks: Alfredson 1998, Am J Sports Med 26:360', () => {
  const { lines, weeks } = PROGRAMMES.find(({ code }) => code === 'lowering-step')!;
  const perWeek = lines.map((line) => doseSum(line).repetitionsPerWeek[0]).reduce((sum, one) => sum + one, 0);
  expect([perWeek / 7, perWeek * weeks!]).toEqual([180, 15_120]);
});

test('lowering at floor level is 90 a day and 7560 in twelve weeks, and never at a step: Jonsson 2008, Br J Sports Med 42:746', () => {
  const { lines, weeks } = PROGRAMMES.find(({ code }) => code === 'lowering-level')!;
  const perWeek = lines.map((line) => doseSum(line).repetitionsPerWeek[0]).reduce((sum, one) => sum + one, 0);
  expect([perWeek / 7, perWeek * weeks!]).toEqual([90, 7560]);
  expect(lines.every(({ exercise }) => exercise !== 'step-raise')).toBe(true);
});

describe('levels from Silbernagel 2020, J Athl Train 55:438, table 2', () => {
  const repetitionsOf = (code: string) =>
    Object.fromEntries(
      LEVELS.find((level) => level.code === code)!.lines.map((line) => [line.exercise, doseSum(line).repetitions]),
    );

  test('the first is daily: 3 times 10 to 15 on two legs, 3 times 10 seated and lowered', () => {
    expect(repetitionsOf('learn')).toEqual({
      'two-leg-raise': [30, 45],
      'seated-raise': [30, 30],
      'one-leg-lowering': [30, 30],
    });
    const { lines } = LEVELS.find(({ code }) => code === 'learn')!;
    expect(lines.map(({ perWeek }) => perWeek)).toEqual([
      [7, 7],
      [7, 7],
      [7, 7],
    ]);
  });

  test('the ones after it are 3 times 15 of each, and quick bounces 3 times 20', () => {
    expect(repetitionsOf('range')).toEqual({
      'step-raise': [45, 45],
      'one-leg-lowering': [45, 45],
      'seated-raise': [45, 45],
    });
    expect(repetitionsOf('single')).toEqual({ 'one-leg-raise': [30, 45], 'seated-raise': [45, 45] });
    expect(repetitionsOf('springs')['quick-rebounds']).toEqual([60, 60]);
  });
});

test('hard holds are 5 sets of 4 times 3 s: 60 s at 90 % of the own most (Radovanović 2022)', () => {
  const [line] = PROGRAMMES.find(({ code }) => code === 'hard-holds')!.lines;
  expect(doseSum(line).sessionTensionS).toEqual([60, 60]);
  expect(line.load).toEqual({ kind: 'share-of-own-most', share: 0.9 });
});

test('holds of the first level are 5 times 30 to 45 s', () => {
  const [line] = LEVELS[0].lines;
  expect(doseSum(line)).toMatchObject({ repetitions: [5, 5], sessionTensionS: [150, 225] });
});

test('without a tempo there is no time under tension, and it is not zero', () => {
  const line = LEVELS.find(({ code }) => code === 'springs')!.lines[0];
  expect(doseSum(line)).toMatchObject({ repetitions: [60, 60], setTensionS: null, sessionTensionS: null });
});
