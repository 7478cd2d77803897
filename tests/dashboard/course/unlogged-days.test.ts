import { dayNumber, type PlanItem } from '@surae/casebook';
import { describe, expect, test } from 'vitest';
import { flarePast } from '../../../apps/dashboard/src/course/flare-past.ts';
import { unloggedDays } from '../../../apps/dashboard/src/course/unlogged-days.ts';
import { advisedPerson, inMarch, madeDone, madeMorningChecks, type Past } from '../../support/advised-person.ts';
import { madeExercise, madeRunLimit } from '../../support/plan-items.ts';

const [from, until] = [dayNumber(inMarch(1))!, dayNumber(inMarch(15))!];
const right = (perWeek: number | null, changes: Partial<PlanItem> = {}) =>
  madeExercise('one-leg-raise', { side: 'right', from: inMarch(1), perWeek, ...changes });
const days = (...of: number[]) => new Set(of.map(inMarch));
function missing(past: Past, told: { exercises?: ReadonlySet<string>; running?: ReadonlySet<string> } = {}) {
  const exercises = { left: days(), right: told.exercises ?? days() };
  return unloggedDays(advisedPerson(past), [from, until], { exercises, running: told.running ?? days() });
}
const daily = [{ day: 1, items: [right(7)] }];

describe('planned sessions without a log', () => {
  test('of a daily plan every day without an entry is one, and of a leg without a line none is', () => {
    const { left, right: found } = missing({ plans: daily }, { exercises: days(1, 2, 3, 5, 6, 8, 9, 10, 11, 12) });
    expect(found).toEqual({ days: [4, 7, 13, 14].map(inMarch), oftenNotSaid: false });
    expect(left).toEqual({ days: [], oftenNotSaid: false });
  });

  test('of one that asks for less often, a span without an entry is, whatever day of it it was to be', () => {
    // every other day or so: 14 days at 3.5 a week are spans of two days
    const often = { plans: [{ day: 1, items: [right(3.5)] }] };
    expect(missing(often, { exercises: days(1, 4, 5, 8, 13) }).right.days).toEqual([10, 12].map(inMarch));
    // a span that is not over yet is not due
    const weekly = { plans: [{ day: 1, items: [right(1)] }] };
    expect(
      unloggedDays(advisedPerson(weekly), [from, until - 1], {
        exercises: { left: days(), right: days() },
        running: days(),
      }).right.days,
    ).toEqual([inMarch(7)]);
  });

  test('days before the plan, and those after a line of it is over, are no days of it', () => {
    const late = [{ day: 8, items: [right(7, { from: inMarch(8), until: inMarch(11) })] }];
    expect(missing({ plans: late }).right.days).toEqual([8, 9, 10, 11].map(inMarch));
  });

  test('a plan that does not say how often cannot be counted, and says so', () => {
    expect(missing({ plans: [{ day: 1, items: [right(null)] }] }).right).toEqual({ days: [], oftenNotSaid: true });
  });

  test('of runs the days between say how often; a pause asks for none, and days of which every run is known have none', () => {
    const plans = [{ day: 1, items: [madeRunLimit({ daysBetween: 1 })] }];
    expect(missing({ plans }, { running: days(2, 4, 11) }).running.days).toEqual([6, 8, 10, 14].map(inMarch));
    const runsWhole = [{ from: inMarch(5), until: inMarch(8) }];
    expect(missing({ plans, runsWhole }, { running: days(2, 4, 11) }).running.days).toEqual([10, 14].map(inMarch));
    const pause = [{ day: 1, items: [madeRunLimit({ mostS: 0 })] }];
    expect(missing({ plans: pause }).running).toEqual({ days: [], oftenNotSaid: false });
  });
});

describe('the own threshold', () => {
  const today = inMarch(31);
  const sets = (day: number, of: number) => madeDone('item-1-0', day, { sets: of, repetitions: 10 });
  const all = Array.from({ length: 30 }, (_, i) => i + 1);
  const mornings = madeMorningChecks(1, 31);
  const of = (done: readonly number[]) =>
    flarePast(advisedPerson({ plans: daily, done: done.map((day) => sets(day, 3)), mornings }), today).find(
      ({ kind }) => kind === 'exercises',
    );

  test('a planned session without a log stands among the days with a load that is not known, and never with one of zero', () => {
    const found = of(all.filter((day) => day !== 12 && day !== 20));
    expect(found?.unlogged).toEqual([12, 20].map(inMarch));
    const at = found?.sessions.filter(({ on }) => on === inMarch(12) || on === inMarch(20));
    expect(at?.map(({ load, isFlare }) => [load, isFlare])).toEqual([
      [null, false],
      [null, false],
    ]);
    expect(found?.sessions.some(({ load }) => load === 0)).toBe(false);
    expect(found?.found.ground.unknown).toBe(2);
  });

  test('where too many have none it cannot be told, and says so', () => {
    const few = of(all.filter((day) => day % 2 === 0));
    expect(few?.unlogged).toHaveLength(15);
    expect(few?.found).toMatchObject({ held: 'cannot-tell' });
    expect(few?.found.held === 'cannot-tell' ? few.found.missing : []).toContain('mornings-missing');
    // with every session written down this is not what stands against it
    const whole = of(all);
    expect(whole?.unlogged).toEqual([]);
    expect(whole?.found.held === 'cannot-tell' ? whole.found.missing : ['mornings-missing']).not.toContain(
      'mornings-missing',
    );
  });

  test('what was planned and never written down at all is no history', () => {
    expect(of([])).toBeUndefined();
  });
});
