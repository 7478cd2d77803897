import { COUNT_30_S, FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { targetLine } from '../../../apps/dashboard/src/live/target-line.ts';

const raises = (...heights: number[]): { heightM: number }[] => heights.map((heightM) => ({ heightM }));
const { parameters } = FLOOR;

test('there is no line before two repetitions', () => {
  expect(targetLine([], parameters)).toBeUndefined();
  expect(targetLine(raises(0.1), parameters)).toBeUndefined();
});

test('the line is three quarters of the mean of the best two', () => {
  const line = targetLine(raises(0.06, 0.1, 0.08), parameters);
  expect(line?.referenceM).toBeCloseTo(0.09, 12);
  expect(line?.targetM).toBeCloseTo(0.0675, 12);
});

test('a sixth repetition, however high, does not move the line', () => {
  const five = [0.1, 0.09, 0.08, 0.07, 0.06];
  expect(targetLine(raises(...five, 0.5), parameters)).toEqual(targetLine(raises(...five), parameters));
});

test('the repetitions that are handed in keep their order', () => {
  const found = raises(0.06, 0.1, 0.08);
  targetLine(found, parameters);
  expect(found).toEqual(raises(0.06, 0.1, 0.08));
});

test('a protocol without a share of the reference has no line', () => {
  const none = { ...COUNT_30_S.parameters, heightFraction: { ...parameters.heightFraction, value: null } };
  expect(targetLine(raises(0.1, 0.1), none)).toBeUndefined();
});

test('practice raises give the line before the first repetition; one that is more than 5 % higher takes their place', () => {
  const practice = [0.1, 0.08, 0.1].map((heightM) => ({ heightM, heightUM: 0.001 }));
  expect(targetLine([], parameters, practice)?.referenceM).toBeCloseTo(0.1, 12);
  expect(targetLine(raises(0.105, 0.104), parameters, practice)?.referenceM).toBeCloseTo(0.1, 12);
  expect(targetLine(raises(0.106, 0.09), parameters, practice)?.referenceM).toBe(0.106);
  // one practice raise is no mean of two
  expect(targetLine([], parameters, practice.slice(2))).toBeUndefined();
});
