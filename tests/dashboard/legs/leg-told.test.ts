import { expect, test } from 'vitest';
import { pushesTold, raisesTold } from '../../../apps/dashboard/src/legs/leg-told.ts';
import { pullSentence } from '../../../apps/dashboard/src/result/pull-sentences.ts';
import { scoreFigure } from '../../../apps/dashboard/src/result/score-figure.ts';
import { made } from '../../support/legs-visit.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

const told = (...args: Parameters<typeof madeReport>): string =>
  raisesTold(madeVisit(madeSet('left', madeReport(...args))), 'left').text;

test('every way to end has its own words, and none is blamed on the one who ended', () => {
  expect(told('left', sureCount(22))).toBe('your left leg did 22');
  expect(told('left', sureCount(9), 'pain')).toBe('your left leg stopped for pain at 9');
  expect(told('left', sureCount(8), 'technical')).toBe('your left leg did 8, then the test was ended early');
  expect(told('left', sureCount(60), 'cap')).toBe('your left leg did 60 or more');
  expect(told('left', { ...sureCount(60), censored: true })).toBe('your left leg did 60 or more');
  expect(told('left', sureCount(10), 'fixed-count-done')).toBe('your left leg did 10 of a number that was set before');
  expect(told('left', sureCount(8), null)).toBe('your left leg did 8, and why it ended was not written down');
});

test('what was not measured is said in words and is no zero', () => {
  expect(raisesTold(madeVisit(), 'right')).toEqual({ told: 'untested', text: 'your right leg was not tested' });
  expect(raisesTold(madeVisit(madeSet('left', null)), 'left').text).toBe('there is no result yet for your left leg');
  expect(told('left', sureCount(0))).toBe('nothing that counts was found for your left leg');
  expect(pushesTold(madeVisit(), 'left').text).toBe('your left leg was not tested');
});

test('bounds stand behind a count where they leave room, and are those of the result page', () => {
  const report = madeReport('left', { ...sureCount(22), scoredLow: 21, scoredHigh: 24 });
  const { low, high } = scoreFigure(report);
  expect(told('left', report.count)).toBe(`your left leg did 22 (between ${low} and ${high})`);
});

test('a push is told by the force that the result page tells', async () => {
  const pushes = { left: { netN: 1425 }, right: { netN: 800, reason: 'pain', pain: 6 } } as const;
  const { visit } = await made({ day: '2026-03-02', pushes });
  expect(pullSentence(visit)).toBe('Left reached 1425 N; right stopped for pain; 800 N were tolerated.');
  expect(pushesTold(visit, 'left')).toEqual({ told: 'reached', text: 'your left leg reached 1425 N' });
  expect(pushesTold(visit, 'right')).toEqual({ told: 'pain', text: 'your right leg stopped for pain at 800 N' });
});
