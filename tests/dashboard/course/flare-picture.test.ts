import type { FlareThreshold, SessionAndMorning } from '@surae/guidance';
import { expect, test } from 'vitest';
import type { FlarePast } from '../../../apps/dashboard/src/course/flare-past.ts';
import { flarePicture } from '../../../apps/dashboard/src/course/flare-picture.ts';
import { inMarch } from '../../support/advised-person.ts';

const ground = { weeks: 7, flares: 6, steady: 16, unknown: 3 };
const no: FlareThreshold = { held: 'cannot-tell', ground, missing: ['few-flares'] };
const yes: FlareThreshold = { held: 'yes', ground, threshold: 6, interval: [5, 7], confidence: 0.95, doubts: [] };
const session = (day: number, load: number | null, isFlare: boolean | null): SessionAndMorning => ({
  on: inMarch(day),
  load,
  isFlare,
});
const sessions = [
  session(1, 2, false),
  session(2, 2, false),
  session(3, 7.5, true),
  session(4, null, true),
  session(5, 3, null),
];
const past = (found: FlareThreshold, all = sessions): FlarePast => ({
  side: 'right',
  kind: 'exercises',
  sessions: all,
  found,
  unlogged: [],
  oftenNotSaid: false,
});
const of = (found: FlareThreshold, name: string) =>
  flarePicture(past(found))!.marks.filter(({ attributes }) => attributes['class'] === name);

test('a day has a mark where both its load and its morning are known, and days in one place are counted', () => {
  expect(of(no, 'mark right')).toHaveLength(2);
  expect(of(no, 'small').map(({ text }) => text)).toEqual(['2']);
});

test('an interval and a threshold are drawn where they can be told, and nowhere else', () => {
  expect(of(no, 'interval right')).toEqual([]);
  expect(of(no, 'planned')).toEqual([]);
  const [line] = of(yes, 'planned');
  const [whole] = of(yes, 'interval right faint');
  expect(Number(line.attributes['x1'])).toBeGreaterThan(Number(whole.attributes['x1']));
  expect(Number(line.attributes['x1'])).toBeLessThan(Number(whole.attributes['x2']));
});

test('without a flare there is no picture', () => {
  expect(flarePicture(past(no, [session(1, 2, false)]))).toBeNull();
  expect(flarePicture(past(no, []))).toBeNull();
});

test('who cannot see it is told the loads', () => {
  expect(flarePicture(past(no))!.label).toBe(
    'Picture. Right, exercises: 1 days with a flare on the next morning, after 7.5 min; 2 days with a steady one, after 2 min.',
  );
});
