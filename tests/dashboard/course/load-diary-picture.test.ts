import { expect, test } from 'vitest';
import type { DiaryDay } from '../../../apps/dashboard/src/course/load-diary.ts';
import { loadDiaryPicture } from '../../../apps/dashboard/src/course/load-diary-picture.ts';
import { inMarch } from '../../support/advised-person.ts';

const none = { done: null, planned: null } as const;
const session = { entries: 1, asRaiseS: [240, 300], unweighedS: 0, amountsUnknown: 0 } as const;
const empty = (day: number): DiaryDay => ({
  on: inMarch(day),
  day,
  legs: { left: none, right: none },
  run: null,
  feetH: null,
});
const drawn = (...changed: readonly (Partial<DiaryDay> & { readonly day: number })[]) =>
  loadDiaryPicture({
    days: Array.from({ length: 10 }, (_, i) => ({ ...empty(i + 1), ...changed.find(({ day }) => day === i + 1) })),
  });
const of = (picture: ReturnType<typeof drawn>, name: string) =>
  picture.marks.filter(({ attributes }) => attributes['class'] === name);
const signs = (picture: ReturnType<typeof drawn>) => of(picture, 'sign').map(({ text }) => text);

test('a day that is not known is hatched in every row, and has no bar', () => {
  const picture = drawn();
  expect(of(picture, 'unknown')).toHaveLength(40);
  expect(picture.marks.filter(({ attributes }) => String(attributes['class']).startsWith('bar'))).toEqual([]);
  const told = drawn({ day: 4, legs: { left: { done: session, planned: null }, right: none } });
  expect(of(told, 'unknown')).toHaveLength(39);
  expect(of(told, 'bar left')).toHaveLength(1);
});

test('a bar is as high as the lower end of its range, and pale up to the upper one', () => {
  const picture = drawn({ day: 4, legs: { left: none, right: { done: session, planned: null } } });
  const [bar, pale] = [of(picture, 'bar right')[0], of(picture, 'bar pale right')[0]];
  const heights = [bar, pale].map(({ attributes }) => Number(attributes['height']));
  expect(heights[1] / heights[0]).toBeCloseTo(0.25, 1);
  // one stands on the other
  expect(Number(pale.attributes['y']) + heights[1]).toBeCloseTo(Number(bar.attributes['y']), 0);
});

test('both legs have one scale, and the day stands in one place in every row', () => {
  const leg = (asRaiseS: readonly [number, number]) => ({ done: { ...session, asRaiseS }, planned: null });
  const run = { durationS: 600, distanceM: null };
  const picture = drawn({ day: 4, legs: { left: leg([120, 120]), right: leg([240, 240]) }, run, feetH: 7 });
  const bars = ['bar left', 'bar right', 'bar person'].flatMap((name) => of(picture, name));
  expect(new Set(bars.map(({ attributes }) => attributes['x'])).size).toBe(1);
  const [left, right] = bars.map(({ attributes }) => Number(attributes['height']));
  expect(right / left).toBeCloseTo(2, 1);
});

test('what cannot be weighed, what is not known, and none at all each have a sign of their own', () => {
  const leg = (change: object) => ({ left: none, right: { done: { ...session, ...change }, planned: null } });
  expect(signs(drawn({ day: 2, legs: leg({ unweighedS: 60 }) }))).toEqual(['+']);
  expect(signs(drawn({ day: 2, legs: leg({ asRaiseS: null, amountsUnknown: 1 }) }))).toEqual(['?']);
  expect(signs(drawn({ day: 2, run: { durationS: null, distanceM: 4000 } }))).toEqual(['?']);
  expect(signs(drawn({ day: 2, feetH: 0 }))).toEqual(['0']);
});

test('what is planned is a line over the days on which it is', () => {
  const planned = { lines: 1, asRaiseS: [180, 180], unweighed: 0 } as const;
  const legs = { left: { done: null, planned }, right: none };
  expect(of(drawn({ day: 2, legs }, { day: 3, legs }), 'planned')).toHaveLength(2);
});

test('who cannot see it is told how many days are written down', () => {
  const { label } = drawn({ day: 4, legs: { left: { done: session, planned: null }, right: none }, feetH: 7 });
  expect(label).toContain('from 1 Mar 2026 to 10 Mar 2026.');
  expect(label).toMatch(/1 days? written down, at most 5 minutes of a raise in one\./);
  expect(label).toMatch(/no day written down\..*Hours on the feet: for 1 days\. All other days are unknown\./);
});
