import type { DoneItem } from '@surae/casebook';
import { type DoneEntry, type LegDay, loadByDay, type PlannedLine, plannedAndDone } from '@surae/guidance';
import { describe, expect, test } from 'vitest';
import { marchDay } from '../../support/run-logs.ts';

const line: PlannedLine = {
  id: 'a',
  code: 'one-leg-raise',
  side: 'both',
  load: null,
  sets: 3,
  repetitions: 10,
  tempo: { upS: 3, topS: 0, downS: 3 },
  holdS: null,
  perWeek: 3,
  from: marchDay(1),
  until: null,
};
const seated: PlannedLine = { ...line, id: 's', code: 'seated-raise' };
const step: PlannedLine = { ...line, id: 'e', code: 'step-raise' };
const entry: DoneItem = {
  planItemId: 'a',
  on: marchDay(1),
  what: 'one-leg-raise',
  side: 'both',
  load: null,
  sets: 3,
  repetitions: 10,
  painDuring: null,
  exertion: null,
};
const done = (day: number, change: Partial<DoneItem> = {}): DoneEntry => ({ ...entry, on: marchDay(day), ...change });
const week = Array.from({ length: 7 }, (_, i) => marchDay(i + 1));

function days(
  entries: readonly DoneEntry[],
  held: readonly PlannedLine[] = [line],
  all: readonly PlannedLine[] = [line, seated, step],
) {
  return loadByDay(
    week.map((on) => ({ on, lines: held })),
    all,
    entries,
    80,
  );
}

function leg(of: 'left' | 'right', ...given: Parameters<typeof days>): readonly LegDay[] {
  return days(...given).map(({ legs }) => legs[of]);
}

describe('load by day', () => {
  test('of 3 times 10 raises of 6 s is 180 s of a raise, on the day and on each leg that did it', () => {
    const left = leg('left', [done(2), done(4, { side: 'right' })]);
    expect(left[1]?.done).toEqual({ entries: 1, asRaiseS: [180, 180], unweighedS: 0, amountsUnknown: 0 });
    expect(left[3]?.done).toBeNull();
    expect(leg('right', [done(4, { side: 'right' })])[3]?.done?.asRaiseS).toEqual([180, 180]);
  });

  test('a day of which nothing was written down is unknown, and has no number that could be read as zero', () => {
    const told = days([done(2)]);
    expect(told.map(({ on }) => on)).toEqual(week);
    for (const { on, legs } of told) {
      if (on === marchDay(2)) continue;
      expect(legs.left.done).toBeNull();
      expect(legs.left.planned?.asRaiseS).toEqual([180, 180]);
    }
  });

  test('several entries of a day are one sum, with the range of each', () => {
    // seated: 0.5 over 2.6 to 3 of a raise
    const sum = leg('left', [done(2), done(2, { planItemId: 's' })])[1]?.done;
    expect(sum?.entries).toBe(2);
    expect(sum?.asRaiseS?.[0]).toBeCloseTo(180 + 180 * (0.5 / 3), 9);
    expect(sum?.asRaiseS?.[1]).toBeCloseTo(180 + 180 * (0.5 / 2.6), 9);
  });

  test('what cannot be weighed keeps its time and joins no sum', () => {
    expect(leg('left', [done(2), done(2, { planItemId: 'e' })])[1]?.done).toEqual({
      entries: 2,
      asRaiseS: [180, 180],
      unweighedS: 180,
      amountsUnknown: 0,
    });
    expect(leg('left', [done(2, { planItemId: 'e' })])[1]?.done).toMatchObject({ asRaiseS: null, unweighedS: 180 });
  });

  test.each([
    ['without sets', done(2, { sets: null })],
    ['without repetitions', done(2, { repetitions: null })],
    ['of no line of a plan', done(2, { planItemId: null })],
    ['of a line that is not there', done(2, { planItemId: 'gone' })],
  ])('an entry %s says that something was done, and not how much', (_, one) => {
    expect(leg('left', [one])[1]?.done).toEqual({ entries: 1, asRaiseS: null, unweighedS: 0, amountsUnknown: 1 });
  });

  test('an entry of a line that holds no more is weighed by it', () => {
    expect(leg('left', [done(2)], [])[1]).toMatchObject({ done: { asRaiseS: [180, 180] }, planned: null });
  });

  test('what is planned is one session of every line of the leg, and says what of it cannot be weighed', () => {
    const right = { ...seated, side: 'right' } as const;
    const [left, other] = [leg('left', [], [line, right, step])[0], leg('right', [], [line, right, step])[0]];
    expect(left?.planned).toEqual({ lines: 2, asRaiseS: [180, 180], unweighed: 1 });
    expect(other?.planned?.lines).toBe(3);
    expect(other?.planned?.asRaiseS?.[1]).toBeCloseTo(180 + 180 * (0.5 / 2.6), 9);
    expect(leg('left', [], [step])[0]?.planned).toEqual({ lines: 1, asRaiseS: null, unweighed: 1 });
  });

  test('adds up over days to what is told of the line', () => {
    const entries = [done(1), done(3, { sets: 2 }), done(6, { load: { value: 8, unit: 'kg' } })];
    const sum = leg('left', entries).reduce((all, one) => all + (one.done?.asRaiseS?.[0] ?? 0), 0);
    const [whole] = plannedAndDone([line], entries, marchDay(1), marchDay(7), 80);
    expect(sum).toBeCloseTo(whole?.done?.asRaiseS?.[0] ?? 0, 9);
  });
});
