import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ChartSeries } from '../../../apps/dashboard/src/charts/readings.ts';
import { twinRows } from '../../../apps/dashboard/src/charts/table-twin.ts';
import { runs } from '../../support/runs.ts';

function series(times: readonly number[], values: readonly number[]): ChartSeries {
  return {
    label: 'height',
    unit: 'm',
    times: Float64Array.from(times),
    values: Float64Array.from(values),
    decimals: 1,
    dash: [],
    side: 'left',
  };
}

test('ten seconds in ten rows: least and greatest of each second, and its marks', () => {
  const times = Array.from({ length: 40 }, (_, i) => i / 4);
  const rows = twinRows([series(times, times)], [{ atS: 3.5, label: '1' }], 10);
  expect(rows).toHaveLength(10);
  expect(rows[3]).toEqual({ fromS: 3, toS: 4, ranges: [{ least: 3, greatest: 3.75 }], marks: ['1'] });
  expect(rows[4].marks).toEqual([]);
});

test('a line that has no sample in a stretch has no numbers there', () => {
  const rows = twinRows([series([0, 0.5, 1.5, 2.5], [1, 2, 3, 4]), series([2.5], [9])], [], 3);
  expect(rows.map(({ ranges }) => ranges[1])).toEqual([null, null, { least: 9, greatest: 9 }]);
});

test('no samples give no rows', () => {
  expect(twinRows([series([], [])], [], 5)).toEqual([]);
});

test('there are never more rows than asked for, and no sample and no mark is lost', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 100 }),
      fc.integer({ min: 2, max: 50 }),
      (steps, mostRows) => {
        let timeS = 0;
        const times = steps.map((step) => (timeS += step / 64));
        const values = times.map((_, i) => (i * 7919) % 101);
        const marks = times.map((atS, i) => ({ atS, label: `${i}` }));
        const rows = twinRows([series(times, values)], marks, mostRows);
        expect(rows.length).toBeLessThanOrEqual(mostRows);
        expect(rows.flatMap((row) => row.marks)).toEqual(marks.map(({ label }) => label));
        const ranges = rows.flatMap((row) => row.ranges[0] ?? []);
        expect(Math.max(...ranges.map(({ greatest }) => greatest))).toBe(Math.max(...values));
        expect(Math.min(...ranges.map(({ least }) => least))).toBe(Math.min(...values));
      },
    ),
    runs(100, 1000),
  );
});
