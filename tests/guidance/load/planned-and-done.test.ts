import type { DoneItem, PlanItem } from '@surae/casebook';
import { type DoneEntry, type PlannedLine, plannedAndDone } from '@surae/guidance';
import { describe, expect, test } from 'vitest';
import { marchDay } from '../../support/run-logs.ts';

/** As the documents hold them: what they are is what is taken, and the compiler proves it. */
const item: PlanItem = {
  of: 'exercise',
  what: 'one-leg-raise',
  code: 'one-leg-raise',
  side: 'both',
  load: null,
  sets: 3,
  repetitions: 10,
  tempo: { upS: 3, topS: 0, downS: 3 },
  holdS: null,
  restS: 60,
  lowestFootDeg: 0,
  painLimit: 5,
  run: null,
  goneOver: [],
  perWeek: 3,
  from: marchDay(1),
  until: null,
  proposedBy: null,
  decision: 'accepted',
  why: null,
};
const line: PlannedLine = { ...item, id: 'a' };
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
const week = (entries: readonly DoneEntry[], change: Partial<PlannedLine> = {}, mass: number | null = 80) =>
  plannedAndDone([{ ...line, ...change }], entries, marchDay(1), marchDay(7), mass);
const left = (...given: Parameters<typeof week>) => week(...given).find(({ leg }) => leg === 'left');

describe('planned beside done', () => {
  test('everything as planned is one, on both legs', () => {
    const found = week([done(1), done(3), done(5)]);
    expect(found.map(({ leg, share }) => [leg, share])).toEqual([
      ['left', 1],
      ['right', 1],
    ]);
    expect(found[0]).toMatchObject({
      sessionsPlanned: 3,
      sessionsLogged: 3,
      sessionsUnknown: 0,
      planned: { underTensionS: 180 },
      done: { underTensionS: 540, asRaiseS: [540, 540] },
    });
  });

  test('a session that was not written down is unknown: there is no share, and no zero', () => {
    expect(left([done(1), done(3)])).toMatchObject({ sessionsLogged: 2, sessionsUnknown: 1, share: null });
    expect(left([])).toMatchObject({ sessionsLogged: 0, sessionsUnknown: 3, done: null, share: null });
  });

  test('an entry without its amounts is counted as one that does not tell', () => {
    for (const change of [{ sets: null }, { repetitions: null }]) {
      expect(left([done(1), done(3), done(5, change)])).toMatchObject({
        entriesUnknown: 1,
        done: { underTensionS: 360 },
        share: null,
      });
    }
  });

  test('each leg has its own entries', () => {
    const found = week([done(1), done(3, { side: 'left' }), done(5, { side: 'right' })]);
    expect(found.map(({ sessionsLogged }) => sessionsLogged)).toEqual([2, 2]);
    expect(week([], { side: 'right' }).map(({ leg }) => leg)).toEqual(['right']);
  });

  test('entries of another line and of other days are left out, both ends counted', () => {
    expect(
      left([done(0), done(1), done(7), done(8), done(4, { planItemId: 'b' }), done(4, { planItemId: null })]),
    ).toMatchObject({
      sessionsLogged: 2,
    });
  });

  test('fewer repetitions and a smaller load are a smaller share', () => {
    const fewer = [done(1), done(3), done(5, { repetitions: 4 })];
    expect(left(fewer)?.share).toBeCloseTo(24 / 30, 12);
    const load = { value: 40, unit: 'kg' };
    const lighter = [1, 3, 5].map((day) => done(day, { load: { value: 20, unit: 'kg' } }));
    // 1.25 beside 1.5 times body weight
    expect(left(lighter, { load })?.share).toBeCloseTo(1.25 / 1.5, 12);
    expect(left(lighter, { load }, null)?.share).toBeNull();
  });

  test('a load that was planned and not written down is not known', () => {
    const load = { value: 40, unit: 'kg' };
    expect(left([done(1), done(3), done(5)], { load })).toMatchObject({
      done: { underTensionS: 540, asRaiseS: null, unweighed: 'load' },
      share: null,
    });
  });

  test('of an exercise whose load is not known, the share is still one of time', () => {
    expect(left([done(1), done(3), done(5)], { code: 'step-raise' })).toMatchObject({
      done: { asRaiseS: null, unweighed: 'relative-load' },
      share: 1,
    });
  });

  test('a line that holds for a part of the days asks for a part of the sessions', () => {
    expect(left([], { from: marchDay(4) })?.sessionsPlanned).toBe(2);
    expect(left([], { until: marchDay(2) })?.sessionsPlanned).toBe(1);
    expect(left([], { from: marchDay(9) })).toMatchObject({ sessionsPlanned: 0, share: null });
  });

  test('a plan that does not say how often, or how much, has no share', () => {
    const three = [done(1), done(3), done(5)];
    expect(left(three, { perWeek: null })).toMatchObject({ sessionsPlanned: null, sessionsUnknown: null, share: null });
    expect(left(three, { tempo: null })).toMatchObject({ planned: { withheld: 'time' }, share: null });
  });

  test('a hold is one a set', () => {
    const hold = { code: 'one-leg-hold', repetitions: null, tempo: null, holdS: 30, sets: 5 } as const;
    const held = [1, 3, 5].map((day) => done(day, { sets: 5, repetitions: null }));
    expect(left(held, hold)).toMatchObject({ done: { underTensionS: 450 }, share: 1 });
  });
});
