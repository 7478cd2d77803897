import { nextRun, type RunReturn } from '@surae/guidance';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptLog, marchDay, runOn } from '../../support/run-logs.ts';
import { runs } from '../../support/runs.ts';

const steady: Omit<RunReturn, 'day'> = {
  log: keptLog(runOn(10, 1, 5)),
  begun: marchDay(10),
  criteria: 'yes',
  painHeld: 'yes',
  morningSteady: 'yes',
};
const on = (day: number, change: Partial<RunReturn> = {}) => nextRun({ ...steady, day: marchDay(day), ...change });

describe('the first session', () => {
  test('is five minutes, whatever was run before', () => {
    const log = keptLog(runOn(5, 21, 120));
    expect(on(12, { log, begun: null })).toMatchObject({ step: 'first', mostS: 300, mostM: null });
    expect(on(12, { log, begun: marchDay(12) })).toMatchObject({ step: 'first', mostS: 300 });
  });

  test('waits for everything that is asked for, and what cannot be told is not met and says so', () => {
    expect(on(12, { begun: null, criteria: 'no' })).toMatchObject({ step: 'not-yet', mostS: null, settledBy: [] });
    expect(on(12, { begun: null, criteria: 'cannot-tell' })).toMatchObject({
      step: 'not-yet',
      settledBy: ['criteria'],
    });
  });

  test('cannot lie after the day that is planned', () => {
    expect(() => on(12, { begun: marchDay(13) })).toThrow('not-an-answer');
  });
});

describe('the next session', () => {
  test.each([
    [10, 'rest'],
    [11, 'rest'],
    [12, 'step'],
    [24, 'step'],
    [25, 'again'],
  ])('on March %d after a run of March 10: %s', (day, step) => {
    expect(on(day).step).toBe(step);
  });

  test('says from when on, on a day of rest', () => {
    expect(on(11)).toMatchObject({ mostS: null, mostM: null, from: marchDay(12) });
  });

  test('is the first one again after a gap of more than two weeks', () => {
    expect(on(25)).toMatchObject({ step: 'again', mostS: 300, mostM: null });
  });

  test('grows by a tenth, and by its own runs alone: a long run before the return lifts no cap', () => {
    const log = keptLog(runOn(5, 21, 120), runOn(10, 2, 10));
    expect(on(12, { log })).toMatchObject({ step: 'step', mostS: 660, mostM: 2200, settledBy: [] });
    expect(on(12, { log }).cap.way.most).toBe(23_100);
  });

  test('steps only after the next morning: without it, no more than last time', () => {
    const log = keptLog(runOn(10, 2, 10));
    expect(on(12, { log, morningSteady: 'cannot-tell' })).toMatchObject({
      step: 'same',
      mostS: 600,
      mostM: 2000,
      settledBy: ['morning'],
    });
    expect(on(12, { log, painHeld: 'cannot-tell' })).toMatchObject({ step: 'same', settledBy: ['pain'] });
  });

  test.each(['painHeld', 'morningSteady'] as const)('eases where %s is no, whatever else is known', (name) => {
    const other = { painHeld: 'cannot-tell', morningSteady: 'cannot-tell' } as const;
    expect(on(12, { ...other, [name]: 'no' })).toMatchObject({ step: 'ease', mostS: 300 });
  });

  test('days of the return that nobody knows of leave the cap open, those before it do not', () => {
    const kept = (from: number) => [{ from: marchDay(from), until: marchDay(30) }];
    expect(on(12, { log: { runs: [runOn(10, 1, 5)], kept: kept(10) } }).settledBy).toEqual([]);
    expect(on(12, { log: { runs: [runOn(10, 1, 5)], kept: kept(11) } }).settledBy).toEqual(['runs-of-days']);
  });
});

test('is never over the cap of the day nor above a tenth over the longest of the return', () => {
  const held = fc.constantFrom('yes', 'no', 'cannot-tell');
  const one = fc.tuple(
    fc.integer({ min: -20, max: 40 }),
    fc.integer({ min: 1, max: 20 }),
    fc.integer({ min: 1, max: 120 }),
  );
  fc.assert(
    fc.property(
      fc.array(one, { maxLength: 8 }),
      fc.integer({ min: 1, max: 20 }),
      held,
      held,
      (told, begun, pain, morning) => {
        const log = keptLog(...told.map(([day, km, min]) => runOn(day, km, min)));
        const next = on(30, { log, begun: marchDay(begun), painHeld: pain, morningSteady: morning });
        if (next.step === 'again' || next.step === 'first') return next.mostS === 300;
        const longest = Math.max(0, ...told.filter(([day]) => day >= begun && day < 30).map(([, , min]) => min * 60));
        const most = next.mostS ?? 0;
        const isCapped = most <= next.cap.time.most && most * 10 <= Math.max(longest * 11, 3000);
        return isCapped && (next.step === 'step' || most <= Math.max(longest, 300) || next.step === 'rest');
      },
    ),
    runs(2000, 200_000),
  );
});
