import { loadViews } from '@surae/guidance';
import { expect, test } from 'vitest';
import { runViewsPicture } from '../../../apps/dashboard/src/course/run-views-picture.ts';
import { inMarch } from '../../support/advised-person.ts';

const stride = { activity: 'running', cadencePerMin: 168, speedMps: 2.8, distanceM: 4200 } as const;
const runs = [
  { on: inMarch(8), views: loadViews({ ...stride, cadencePerMin: null }) },
  { on: inMarch(12), views: loadViews(stride) },
];
const picture = runViewsPicture(runs, inMarch(1), inMarch(31))!;
const of = (name: string) => picture.marks.filter(({ attributes }) => attributes['class'] === name);

test('there are three rows, each with an axis of its own, and no fourth that adds them', () => {
  expect(of('name person').map(({ text }) => text)).toEqual([
    'Peak, times a raise',
    'Steps in a km',
    'All steps, as raises',
  ]);
  expect(of('hair')).toHaveLength(9);
});

test('a range is a line that fades, a number a mark, and what cannot be told a question mark', () => {
  // two peaks and one total
  expect(of('interval person faint')).toHaveLength(3);
  expect(of('mark person')).toHaveLength(1);
  expect(of('sign').map(({ text }) => text)).toEqual(['?', '?']);
});

test('where nothing is known of a view there is no scale to read a number from', () => {
  const open = runViewsPicture(runs.slice(0, 1), inMarch(1), inMarch(31))!;
  expect(open.marks.filter(({ attributes }) => attributes['class'] === 'hair')).toHaveLength(5);
});

test('without a run there is no picture', () => {
  expect(runViewsPicture([], inMarch(1), inMarch(31))).toBeNull();
});
