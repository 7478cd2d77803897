import type { Run } from '@surae/casebook';
import { expect, test } from 'vitest';
import { runViews } from '../../../apps/dashboard/src/course/run-views.ts';
import { inMarch } from '../../support/advised-person.ts';

const entry = (day: number, change: Partial<Run> = {}) => ({
  id: `run-${day}`,
  author: 'test',
  at: '',
  body: { on: inMarch(day), durationS: 1500, distanceM: 4200, pain: { left: null, right: null }, ...change },
});
const viewed = (...runs: readonly ReturnType<typeof entry>[]) => runViews({ runs }, inMarch(5), inMarch(20));

test('a run has its speed from time and way, and the oldest stands first', () => {
  const found = viewed(entry(12, { cadencePerMin: 168 }), entry(8), entry(4), entry(21));
  expect(found.map(({ on }) => on)).toEqual([inMarch(8), inMarch(12)]);
  // 168 / 60 steps a second at 2.8 m/s are one a metre, 500 of each leg in a kilometre
  expect(found[1].views.stepsPerKm).toBeCloseTo(500, 9);
  expect(found[1].views.total?.steps).toBeCloseTo(2100, 9);
});

test('what was not told of a run leaves a view open, and the others stand', () => {
  expect(viewed(entry(8))[0].views.missing).toEqual(['cadence']);
  expect(viewed(entry(8, { durationS: null, cadencePerMin: 168 }))[0].views.missing).toEqual(['speed']);
  expect(viewed(entry(8, { distanceM: null, cadencePerMin: null }))[0].views).toMatchObject({
    missing: ['cadence', 'speed', 'way'],
    stepsPerKm: null,
    total: null,
  });
});
