import type { TrialContext } from '@surae/analysis';
import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';

const flat = Array<number>(12).fill(0.1);
const fading = flat.map((height, i) => height - 0.0015 * i);
const effort = (heightsM: number[], context: TrialContext, rests = {}) =>
  judged({ heightsM, rests }, { context }).effort;

test('fatigue, full exertion and a height that drops by 10 % make a good effort', () => {
  expect(effort(fading, { endReason: 'fatigue', exertion: 9 })).toEqual({
    good: 'yes',
    signs: ['height-drop'],
    reason: 'signs-of-fatigue',
  });
});

test('a period that grows is a sign as well', () => {
  const rests = Object.fromEntries(flat.map((_, i) => [i, 0.03 * i]));
  expect(effort(flat, { endReason: 'fatigue', exertion: 8 }, rests).signs).toEqual(['tempo-lengthening']);
});

test('low exertion without a sign of fatigue is said in neutral words', () => {
  expect(effort(flat, { endReason: 'fatigue', exertion: 5 })).toMatchObject({
    good: 'no',
    reason: 'stopped-before-signs-of-fatigue',
  });
});

test('what is not known leaves the answer open', () => {
  expect(effort(fading, {})).toMatchObject({ good: 'cannot_tell', reason: 'too-little-known' });
  expect(effort(fading, { endReason: 'fatigue' })).toMatchObject({ good: 'cannot_tell' });
  expect(effort(flat, { endReason: 'fatigue', exertion: 9 })).toMatchObject({ good: 'cannot_tell' });
});

test('an end for pain is no test of capacity, however full the exertion', () => {
  expect(effort(fading, { endReason: 'pain', exertion: 10 })).toMatchObject({
    good: 'no',
    reason: 'not-a-capacity-test',
  });
});
