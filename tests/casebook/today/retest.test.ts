import { retestState, type VisitLine } from '@surae/casebook';
import { expect, test } from 'vitest';
import { dayAfter, episodeLine, testedOn } from '../../support/listed-person.ts';

const state = (today: number, ...visits: readonly VisitLine[]): ReturnType<typeof retestState> =>
  retestState(episodeLine, visits, dayAfter(today));
const due = (today: number, ...visits: readonly VisitLine[]): readonly [number, string] | string => {
  const found = state(today, ...visits);
  return found.kind === 'due' ? [found.weeks, found.what] : found.kind;
};
const seenOn = (day: number): VisitLine => testedOn(day, { tested: false });

test('each time after the first test is due on its day and not on the day before', () => {
  const first = testedOn(5);
  expect(due(5 + 13, first)).toBe('not-yet');
  expect(due(5 + 14, first)).toEqual([2, 'tolerance']);
  expect(due(5 + 27, first)).toEqual([2, 'tolerance']);
  expect(due(5 + 28, first)).toEqual([4, 'test']);
  expect(due(5 + 55, first)).toEqual([4, 'test']);
  expect(due(5 + 56, first)).toEqual([8, 'test']);
  expect(due(5 + 83, first)).toEqual([8, 'test']);
  expect(due(5 + 84, first)).toEqual([12, 'test']);
  expect(due(5 + 400, first)).toEqual([12, 'test']);
  expect(state(5 + 30, first)).toMatchObject({ since: dayAfter(5 + 28).slice(0, 10) });
});

test('a visit up to three days early stands for a time, one four days early does not', () => {
  expect(due(28, testedOn(0), testedOn(25))).toBe('not-yet');
  expect(due(28, testedOn(0), testedOn(24))).toEqual([4, 'test']);
  expect(due(55, testedOn(0), testedOn(25))).toBe('not-yet');
  expect(due(56, testedOn(0), testedOn(25))).toEqual([8, 'test']);
});

test('week 2 asks for no test: any visit in which something was answered is the look at it', () => {
  expect(due(20, testedOn(0), seenOn(12))).toBe('not-yet');
  expect(due(20, testedOn(0), { ...seenOn(12), answered: false })).toEqual([2, 'tolerance']);
  expect(due(30, testedOn(0), seenOn(29))).toEqual([4, 'test']);
});

test('after week 12 it is the time since the last test, from four weeks on', () => {
  const done = [testedOn(0), testedOn(84)];
  expect(due(84 + 27, ...done)).toBe('not-yet');
  expect(state(84 + 28, ...done)).toEqual({ kind: 'due-further', last: dayAfter(84).slice(0, 10) });
  expect(due(84 + 30, ...done, testedOn(84 + 29))).toBe('not-yet');
  // a look without a test does not stand for one
  expect(due(84 + 40, ...done, seenOn(84 + 29))).toBe('due-further');
});

test('tests before the episode and of days to come are none of it', () => {
  expect(due(28, testedOn(-1))).toBe('never-tested');
  expect(due(28, testedOn(-20), testedOn(10))).toEqual([2, 'tolerance']);
  expect(due(28, testedOn(29))).toBe('never-tested');
  expect(due(28, testedOn(0))).toEqual([4, 'test']);
});

test('missing days are never read as nothing due', () => {
  expect(due(28)).toBe('never-tested');
  expect(due(28, seenOn(3))).toBe('never-tested');
  expect(retestState(episodeLine, [testedOn(0)], 'no time').kind).toBe('cannot-tell');
  expect(due(28, testedOn(0), testedOn(1, { begunAt: '' }))).toBe('cannot-tell');
  expect(retestState({ ...episodeLine, began: null, at: '' }, [testedOn(0)], dayAfter(1)).kind).toBe('cannot-tell');
});

test('the day is that of the clock of the place, whatever the hour', () => {
  const first = testedOn(0, { begunAt: '2026-03-01T23:59:00.000-05:00' });
  const at = (iso: string): string => retestState(episodeLine, [first], iso).kind;
  expect(at('2026-03-14T23:59:00.000-05:00')).toBe('not-yet');
  expect(at('2026-03-15T00:01:00.000-05:00')).toBe('due');
});
