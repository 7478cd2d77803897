import type { HandoutLeg } from '@surae/exchange';
import { expect, test } from 'vitest';
import { handoutOf } from '../../../apps/dashboard/src/home/handout-of.ts';
import { homeMarks } from '../../../apps/dashboard/src/home/home-marks.ts';
import { legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import { twoMarks } from '../../../apps/dashboard/src/legs/two-marks.ts';
import { made } from '../../support/legs-visit.ts';

const leg = (change: Partial<HandoutLeg>): HandoutLeg => ({ told: 'did', value: 20, low: 18, high: 22, ...change });

test('the picture at home is the picture of the clinic, mark for mark', async () => {
  const { visit, person, earlier } = await made({ day: '2026-03-02', left: { count: 27 }, right: { count: 19 } });
  const [{ figures }] = legsView(visit, person, earlier).tests;
  expect(homeMarks(handoutOf(visit, null, []))).toEqual(twoMarks(figures));
});

test('what was not tested is a gap, what goes on has no end, and nothing is drawn of nothing', () => {
  const open = homeMarks({ legs: { left: leg({}), right: null } });
  expect(open?.marks.filter(({ attributes }) => attributes['class'] === 'mark right')).toEqual([]);
  expect(open?.label).toMatch(/not measured/i);
  const atLeast = homeMarks({ legs: { left: leg({ told: 'at-least' }), right: leg({}) } });
  expect(atLeast?.marks.some(({ text }) => text === 'at least 20')).toBe(true);
  expect(homeMarks({ legs: { left: null, right: null } })).toBeNull();
});
