import { expect, test } from 'vitest';
import { plotOptions } from '../../../apps/dashboard/src/charts/plot-options.ts';
import type { ChartSeries } from '../../../apps/dashboard/src/charts/readings.ts';

const none = new Float64Array(0);
const left: ChartSeries = { label: 'left', unit: 'cm', times: none, values: none, decimals: 1, dash: [], side: 'left' };
const right: ChartSeries = { ...left, label: 'right', dash: [8, 5], side: 'right' };
const inkOf = (name: string): string => `ink of ${name}`;
const still = plotOptions({ width: 600, height: 300, live: false, liveSpan: 1 }, [left, right], inkOf);

test('each leg has its own ink and its own dash', () => {
  const [, first, second] = still.series;
  expect([first?.stroke, first?.dash]).toEqual(['ink of left', []]);
  expect([second?.stroke, second?.dash]).toEqual(['ink of right', [8, 5]]);
});

test('there is room above the highest top for what is written there', () => {
  const range = still.scales?.['y']?.range;
  if (typeof range !== 'function') throw new Error('The range is fixed.');
  const [least, most] = range({} as never, 0, 10, 'y');
  expect(least).toBeCloseTo(-0.5, 12);
  expect(most).toBeCloseTo(11.5, 12);
  expect(range({} as never, null as never, null as never, 'y')).toEqual([0, 1]);
});

test('a live picture has neither axes nor cursor', () => {
  const live = plotOptions({ width: 200, height: 90, live: true, liveSpan: 5 }, [left], inkOf);
  expect(live.axes?.map(({ show }) => show)).toEqual([false, false]);
  expect(live.cursor?.show).toBe(false);
});

test('a live picture does not blow up a signal that rests, and still shows all of one that moves', () => {
  const live = plotOptions({ width: 200, height: 90, live: true, liveSpan: 5 }, [left], inkOf);
  const range = live.scales?.['y']?.range;
  if (typeof range !== 'function') throw new Error('The range is fixed.');
  expect(range({} as never, 0.01, 0.02, 'y')).toEqual([0, 5]);
  expect(range({} as never, -1, 9, 'y')).toEqual([-1, 9]);
});
