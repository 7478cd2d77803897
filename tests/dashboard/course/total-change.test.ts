import type { Entry, QuestionnaireTotal } from '@surae/casebook';
import { expect, test } from 'vitest';
import { apartPoints, totalChange, totalSeries } from '../../../apps/dashboard/src/course/total-change.ts';

/** Totals as they were written down, one after the other. */
function told(...bodies: readonly Partial<QuestionnaireTotal>[]): readonly Entry<QuestionnaireTotal>[] {
  return bodies.map((body, at) => ({
    id: `t${at}`,
    at: `2026-01-01T09:00:0${at}Z`,
    author: 'RN',
    body: { questionnaire: 'visa-a', languageVersion: 'de', total: 50, on: '2026-01-05', side: null, ...body },
  }));
}

const change = (...bodies: readonly Partial<QuestionnaireTotal>[]) => totalChange(totalSeries(told(...bodies))[0]);

// Lagas 2021: 14 (3 to 19) at 12 weeks, 7 (-10 to 28) at 24 weeks
test('the published figure whose time is nearest decides, and within its limits nobody can tell', () => {
  const after = (on: string, total: number) => {
    const found = change({}, { on, total });
    return [found?.figure?.weeks, found?.better, found?.important];
  };
  expect(after('2026-03-30', 70)).toEqual([12, 20, 'yes']);
  expect(after('2026-03-30', 64)).toEqual([12, 14, 'cannot_tell']);
  expect(after('2026-03-30', 52)).toEqual([12, 2, 'no']);
  expect(after('2026-06-22', 70)).toEqual([24, 20, 'cannot_tell']);
  expect(after('2026-06-22', 79)).toEqual([24, 29, 'yes']);
  // 18 weeks lie between both: a day less is nearer to 12
  expect(after('2026-05-10', 70)).toEqual([12, 20, 'yes']);
  expect(after('2026-05-12', 70)).toEqual([24, 20, 'cannot_tell']);
});

test('where the low end is best, falling is better; its wobble is told and no important change is', () => {
  const tendins = (total: number) =>
    change({ questionnaire: 'tendins-a', total: 60 }, { questionnaire: 'tendins-a', total, on: '2026-03-30' });
  expect(tendins(41)).toMatchObject({ better: 19, overWobble: 'yes', important: 'cannot_tell', figure: null });
  expect(tendins(42)).toMatchObject({ better: 18, overWobble: 'cannot_tell' });
  expect(tendins(80)).toMatchObject({ better: -20, overWobble: 'yes', important: 'no' });
});

test('totals of another language version or another leg are not compared', () => {
  expect(change({ languageVersion: 'fr' }, { on: '2026-03-30', total: 90 })).toBeNull();
  const [series] = totalSeries(
    told({ languageVersion: 'fr', total: 10 }, { on: '2026-02-01', total: 40 }, { on: '2026-03-30', total: 45 }),
  );
  expect(totalChange(series)).toMatchObject({ from: { total: 40 }, now: { total: 45 }, better: 5 });
  expect(apartPoints(series).map(({ total }) => total)).toEqual([10]);
  expect(totalSeries(told({ side: 'left' }, { side: 'right' }, {})).map(({ side }) => side)).toEqual([
    'left',
    'right',
    null,
  ]);
});

test('of one day the one written last counts, and days are in order however they were written', () => {
  const [series] = totalSeries(told({ on: '2026-03-30', total: 70 }, { total: 40 }, { total: 45 }));
  expect(series.points.map(({ on, total }) => [on, total])).toEqual([
    ['2026-01-05', 45],
    ['2026-03-30', 70],
  ]);
  expect(totalChange({ ...series, points: series.points.slice(0, 1) })).toBeNull();
});

test('of a questionnaire that is not known nothing is said over time', () => {
  expect(totalSeries(told({ questionnaire: 'tendon-8' }))).toEqual([]);
});

test('typed tenths give a difference of tenths', () => {
  expect(change({ total: 50.3 }, { on: '2026-03-30', total: 70.4 })?.better).toBe(20.1);
});
