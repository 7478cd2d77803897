import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { pullSign } from '../../../packages/analysis/src/setup/pull-sign.ts';
import { samplesOf } from '../../support/open-recordings.ts';

const rule = setupDefaults.guess;
/** Rest, one effort of a third of the time, rest. */
const effort = Float64Array.from({ length: 900 }, (_, i) => 40 + (i > 400 && i < 700 ? 600 : 0));

test('an effort goes up, and turned round it goes down', () => {
  expect(pullSign(effort, 1, rule)).toMatchObject({ answer: 'up', asks: false, evidence: { code: 'above-rest' } });
  const down = effort.map((value) => -value);
  expect(pullSign(down, 1, rule)).toMatchObject({ answer: 'down', asks: false, evidence: { code: 'below-rest' } });
});

test('the answer does not hang on unit or zero', () => {
  const other = effort.map((value) => 0.1 * value - 300);
  expect(pullSign(other, 0.1, rule).confidence).toBeCloseTo(pullSign(effort, 1, rule).confidence, 9);
});

test('without an effort it says nothing', () => {
  expect(
    pullSign(
      effort.map((value) => value / 1000),
      1,
      rule,
    ),
  ).toMatchObject({ answer: null, confidence: 0 });
});

test('a load that is put on or taken off and stays so tells nothing, however long it hung', () => {
  const off = Float64Array.from({ length: 900 }, (_, i) => (i < 700 ? 300 : 0));
  expect(pullSign(off, 1, rule)).toMatchObject({ answer: null, asks: true });
  expect(pullSign(off.toReversed(), 1, rule)).toMatchObject({ answer: null, asks: true });
});

test('a reading that is as long at one end as at the other asks', () => {
  const even = Float64Array.from({ length: 900 }, (_, i) => 50 * Math.sin(i / 10));
  expect(pullSign(even, 0.1, rule).asks).toBe(true);
});

test('an open recording of a hold: it goes up, as its dynamometer counts', () => {
  const torque = samplesOf('ankle-torque/hold.csv', 'torque');
  expect(pullSign(torque, 0.1, rule).answer).toBe('up');
});
