import { loadViews, type Stride } from '@surae/guidance';
import { MARK_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { viewRows, viewsRest, viewsTold } from '../../../apps/dashboard/src/course/run-views-words.ts';
import { inMarch } from '../../support/advised-person.ts';

const stride: Stride = { activity: 'running', cadencePerMin: 168, speedMps: 2.8, distanceM: 4200 };
const views = loadViews(stride);
const open = loadViews({ ...stride, cadencePerMin: null });

test('the three views stand each by itself, with its range', () => {
  expect(viewsTold(views).map(({ name, value }) => [name, value])).toEqual([
    // 4 over 3 to 7 over 2.6
    ['Peak of a step', '1.3 to 2.7 times the peak of a raise on that leg'],
    ['Steps of each leg in a kilometre', '500 steps'],
    ['All steps of each leg', '2100 steps, as much as 2800 to 5650 raises at the peak alone'],
  ]);
});

test('each has what it rests on, with a mark in words', () => {
  const marks = Object.values(MARK_WORDS).map(({ text }) => text);
  for (const { from } of viewsTold(views)) {
    expect(from.length).toBeGreaterThan(0);
    for (const line of from) expect(marks.some((mark) => line.endsWith(mark))).toBe(true);
  }
  const [peak] = viewsTold(views);
  expect(peak.from.join(' ')).toMatch(/\(running: 5\.2 times body weight\).*\(running: 4 to 7 times body weight\)/);
  expect(peak.from.join(' ')).toMatch(/\(a raise: 2\.6 to 3 times body weight\)/);
});

test('a view that cannot be told says what is missing, and is no zero', () => {
  expect(viewsTold(open).map(({ value }) => value)).toEqual([
    '1.3 to 2.7 times the peak of a raise on that leg',
    'cannot tell: steps a minute were not written down',
    'cannot tell: steps a minute were not written down',
  ]);
  // the way is not asked for steps in a kilometre
  const noWay = loadViews({ ...stride, speedMps: null, distanceM: null });
  expect(viewsTold(noWay)[1].value).toBe('cannot tell: time or way was not written down');
});

test('the table has a row for each run, the newest first', () => {
  const runs = [
    { on: inMarch(8), views: open },
    { on: inMarch(12), views },
  ];
  expect(viewRows(runs)).toEqual([
    ['12 Mar 2026', '1.3 to 2.7', '500', '2800 to 5650'],
    ['8 Mar 2026', '1.3 to 2.7', 'cannot tell', 'cannot tell'],
  ]);
  expect(viewsRest(runs)).toHaveLength(4);
});
