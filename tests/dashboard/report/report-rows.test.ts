import { REPORT_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { figureCell, reportRows, toldLegs } from '../../../apps/dashboard/src/report/report-rows.ts';
import { made } from '../../support/legs-visit.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

const whole = { decimals: 0 };

test('a figure stands with its interval, a lower bound as one, and what is open by its reason', () => {
  const figure = { kind: 'measured', value: 27, low: 25, high: 29, atLeast: false } as const;
  expect(figureCell(figure, whole)).toBe('27 (25 to 29)');
  expect(figureCell({ ...figure, atLeast: true }, whole)).toMatch(/^at least 27/);
  expect(figureCell({ kind: 'open', why: 'not tested' }, whole)).toBe('not tested');
});

test('every row has a cell for each leg that the report tells of, left before right', async () => {
  const { visit } = await made({ day: '2026-03-02', left: { count: 27 }, right: { count: 19 } });
  for (const row of reportRows(visit, 'heel-raise')) expect(row).toHaveLength(3);
  const [count] = reportRows(visit, 'heel-raise');
  expect(count.slice(1).map((cell) => cell.slice(0, 2))).toEqual(['27', '19']);
  expect(toldLegs(visit)).toEqual(['left', 'right']);
  const one = { ...visit, only: 'right' } as const;
  for (const row of reportRows(one, 'heel-raise')) expect(row).toHaveLength(2);
});

test('the sensor at the heel stands with the length of its string, or with that it was not measured', () => {
  const report = madeReport('left', sureCount(3));
  const { choice } = madeSet('left', report);
  const sensorOf = (change: Partial<typeof choice> & { readonly stringRestLengthM?: number }) =>
    reportRows(madeVisit(madeSet('left', report, { choice: { ...choice, ...change } })), 'heel-raise').find(
      ([name]) => name === REPORT_WORDS.sensor.text,
    )?.[1];
  expect(sensorOf({ stringRestLengthM: 0.123 })).toBe('heel, string 12.3 cm long at rest');
  expect(sensorOf({})).toBe('heel, length of the string not measured');
  expect(sensorOf({ placement: 'foot' })).toBe('foot');
});

test('work is that of the convention which the sensor allows, and left out where none was measured', () => {
  const none = { heelJ: null, heelUJ: null, ankleJ: null, ankleUJ: null, platformJ: null, platformUJ: null };
  const work = { ...none, riseJ: null, riseUJ: null, seatedJ: null, seatedUJ: null };
  const set = (side: 'left' | 'right', change: Partial<typeof work> | { heelJ: number; heelUJ: number }) => {
    const report = madeReport(side, sureCount(3));
    return madeSet(side, { ...report, measures: { ...report.measures, work: { ...work, ...change } } });
  };
  const rowOf = (...sets: readonly ReturnType<typeof madeSet>[]) =>
    reportRows(madeVisit(...sets), 'heel-raise').find(([name]) => name === REPORT_WORDS.work.text);
  expect(rowOf(set('left', { heelJ: 1374, heelUJ: 120 }), set('right', {}))?.slice(1)).toEqual([
    '1374\u00A0±\u00A0120\u00A0J\u00A0(standard\u00A0uncertainty)',
    REPORT_WORDS['work-open'].text,
  ]);
  expect(rowOf(set('left', {}), set('right', {}))).toBeUndefined();
});
