import { assess, defaultSettings } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { handoutOf } from '../../../apps/dashboard/src/home/handout-of.ts';
import { raisesTold } from '../../../apps/dashboard/src/legs/leg-told.ts';
import { scoreFigure } from '../../../apps/dashboard/src/result/score-figure.ts';
import { attemptedSentence, summarySentence } from '../../../apps/dashboard/src/result/summary-sentence.ts';
import { twoLegFigures } from '../../../apps/dashboard/src/result/two-legs.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';
import { steadyTaps } from '../../support/tapped.ts';

const left22 = madeSet('left', madeReport('left', { ...sureCount(22), scoredLow: 21, scoredHigh: 24 }));
const right25 = madeSet('right', madeReport('right', sureCount(25)));

test('both legs stand in one sentence, left before right whatever the order of the sets, bounds only where they leave room', () => {
  const sentence = 'Left did 22 (between 21 and 24), right did 25.';
  expect(summarySentence(madeVisit(left22, right25))).toBe(sentence);
  expect(summarySentence(madeVisit(right25, left22))).toBe(sentence);
});

test('a set that ended for pain says the number and the interval that its axis draws', () => {
  // 4 count, perhaps 3; of the 5 that were tried there may have been 4 to 7
  const counts = { ...sureCount(5), low: 4, high: 7, valid: 4, scored: 4, scoredLow: 3, scoredHigh: 4 };
  const visit = madeVisit(madeSet('left', madeReport('left', counts, 'pain')), right25);
  expect(summarySentence(visit)).toBe('Left stopped for pain with 4 that count (between 3 and 4), right did 25.');
});

test('whatever the end, the sentence holds the number and the bounds of the first axis', () => {
  const counts = { ...sureCount(12), low: 10, high: 17, valid: 9, scored: 9, scoredLow: 7, scoredHigh: 11 };
  for (const reason of ['fatigue', 'pain', 'technical', 'safety', 'cap', 'fixed-count-done', null] as const) {
    const visit = madeVisit(madeSet('left', madeReport('left', counts, reason)), right25);
    const [axis] = twoLegFigures(visit);
    const said = summarySentence(visit).match(/\d+/g)?.map(Number);
    const { value, low, high, atLeast } = scoreFigure(visit.sets[0].report!);
    expect(axis?.left).toEqual({ kind: 'measured', value, low, high, atLeast });
    expect(said, String(reason)).toEqual([...(atLeast ? [9] : [9, 7, 11]), 25]);
  }
});

test('every way to end has its own words', () => {
  const said = (...args: Parameters<typeof madeReport>): string =>
    summarySentence(madeVisit(madeSet('left', madeReport(...args)), right25)).replace(', right did 25.', '');
  expect(said('left', sureCount(8), 'technical')).toBe('Left was ended early with 8 that count');
  expect(said('left', sureCount(8), 'safety')).toBe('Left was ended early with 8 that count');
  expect(said('left', sureCount(60), 'cap')).toBe('Left did at least 60');
  expect(said('left', { ...sureCount(60), censored: true }, 'fatigue')).toBe('Left did at least 60');
  expect(said('left', sureCount(10), 'fixed-count-done')).toBe('Left did 10 of the number that was set');
  expect(said('left', sureCount(10), null)).toBe('Left did 10, and why it ended was not recorded');
  expect(said('left', sureCount(0), 'fatigue')).toBe('On the left no heel raise was found');
});

test('a leg that was not tested, or has no result yet, is named and not left out', () => {
  expect(summarySentence(madeVisit(right25))).toBe('Left was not tested, right did 25.');
  expect(summarySentence(madeVisit(madeSet('left', null), right25))).toBe('Left has no result yet, right did 25.');
  expect(summarySentence(madeVisit({ ...left22, setAside: true }, right25))).toBe('Left was not tested, right did 25.');
});

test('after a pop there is no score: not in the sentence, not on the axis, not on the page of who was tested', () => {
  const end = { reason: 'safety', painPeak: null, exertion: null, happened: 'pop' } as const;
  const visit = madeVisit(madeSet('left', madeReport('left', sureCount(7), 'safety'), { end }), right25);
  expect(summarySentence(visit)).toBe('Left stopped for a pop or a sudden give, so there is no score, right did 25.');
  for (const { left } of twoLegFigures(visit)) {
    expect(left).toEqual({ kind: 'open', why: 'Stopped for a pop or a sudden give: no score.' });
  }
  expect(raisesTold(visit, 'left')).toEqual({
    told: 'popped',
    text: 'your left leg stopped for a pop or a sudden give, so it has no number',
  });
  expect(handoutOf(visit, null, []).legs).toMatchObject({ left: null, right: { value: 25 } });
});

test('how the number came about: all met, some met, some after the end', () => {
  expect(attemptedSentence('left', madeReport('left', sureCount(22)))).toBe(
    'Left: all 22 that were tried met every rule that could be judged.',
  );
  expect(attemptedSentence('right', madeReport('right', { attempted: 25, valid: 22, scored: 22 }))).toBe(
    'Right: 25 tried, 22 of them met every rule that could be judged.',
  );
  expect(attemptedSentence('right', madeReport('right', { attempted: 25, valid: 22, scored: 20 }))).toBe(
    'Right: 25 tried, 22 of them met every rule that could be judged. 2 of those came after the test had ended and do not count.',
  );
  expect(attemptedSentence('right', madeReport('right', sureCount(0)))).toBeUndefined();
});

test('no sentence says deficit, weak, fail, normal, significant or injured', () => {
  const reasons = ['fatigue', 'pain', 'other-stop', 'technical', 'cap', 'fixed-count-done', null] as const;
  for (const reason of reasons) {
    const visit = madeVisit(madeSet('left', madeReport('left', sureCount(7), reason)), right25);
    expect(summarySentence(visit)).not.toMatch(/deficit|weak|fail|normal|significant|injured|only|%/i);
  }
});

test('a count by hand says so beside its number, and that no rule was judged', () => {
  const context = { endReason: 'fatigue' } as const;
  const request = { placement: 'hand', side: 'left', protocol: FLOOR, subject: {}, context } as const;
  const report = assess(steadyTaps(22), request, defaultSettings());
  const visit = madeVisit(madeSet('left', report), right25);
  expect(summarySentence(visit)).toBe('Left did 22 (between 20 and 24), counted by hand, right did 25.');
  expect(attemptedSentence('left', report)).toBe('Left: 22 counted by hand. No rule was judged.');
  const marks = [{ atS: 5.1, criterion: 'knee' }] as const;
  const marked = assess(steadyTaps(22), { ...request, context: { ...context, marks } }, defaultSettings());
  expect(attemptedSentence('left', marked)).toBe(
    'Left: 22 counted by hand, 1 of them marked with a fault. No other rule was judged.',
  );
  // the axis of the score says it of that leg, and heights are open and share no axis
  const [score, ...heights] = twoLegFigures(visit);
  expect(score.title).toBe('Repetitions that count, left counted by hand');
  expect(heights.map(({ left }) => left)).toEqual(
    heights.map(() => ({ kind: 'open', why: 'Counted by hand: height not measured.' })),
  );
});
