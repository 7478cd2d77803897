import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import type { VectorSignal } from '../../../packages/analysis/src/movement/orientation.ts';
import { flexionAxis } from '../../../packages/analysis/src/setup/flexion-axis.ts';

const rule = setupDefaults.guess;
const timesS = Float64Array.from({ length: 900 }, (_, i) => i / 100);
/** Rate of three raises of 30 degrees, the first way up positive. */
const raises = timesS.map((timeS) => (timeS < 1 || timeS >= 7 ? 0 : 0.26 * Math.PI * Math.sin(Math.PI * (timeS - 1))));
const scaled = (share: number): Float64Array => raises.map((value) => share * value);

test('about y, up first: y+; turned round: y-', () => {
  const zeros = new Float64Array(900);
  const found = flexionAxis(timesS, [zeros, raises, zeros], rule);
  expect(found).toMatchObject({ nearest: 'y+', reseat: false, asks: false, evidence: { code: 'one-axis' } });
  expect(found.axis).toEqual([0, 1, 0]);
  expect(flexionAxis(timesS, [zeros, scaled(-1), zeros], rule).nearest).toBe('y-');
});

test('a mounting in any direction is found', () => {
  const found = flexionAxis(timesS, [scaled(0.6), scaled(0), scaled(-0.8)], rule);
  expect(found.axis!.map((value) => Math.round(1000 * value) / 1000 + 0)).toEqual([0.6, 0, -0.8]);
});

test('a resting rate is no turn about an axis', () => {
  const drift = new Float64Array(900).fill(0.02);
  const turned: VectorSignal = [drift, raises.map((value) => value + 0.01), drift];
  expect(flexionAxis(timesS, turned, rule).nearest).toBe('y+');
});

test('turning about several axes asks for another seat', () => {
  const other = timesS.map((timeS) => (timeS < 1 || timeS >= 7 ? 0 : 0.6 * Math.cos(2.3 * timeS)));
  const found = flexionAxis(timesS, [other, raises, other], rule);
  expect(found).toMatchObject({ reseat: true, asks: true, evidence: { code: 'several-axes' } });
  expect(found.share).toBeLessThan(0.8);
});

test('one move is not enough to be sure, and none says nothing', () => {
  const zeros = new Float64Array(900);
  const once = raises.map((value, i) => (timesS[i] < 2 ? value : 0));
  expect(flexionAxis(timesS, [zeros, once, zeros], rule).asks).toBe(true);
  expect(flexionAxis(timesS, [zeros, zeros, zeros], rule)).toMatchObject({ axis: null, confidence: 0 });
  expect(flexionAxis(timesS, [zeros, scaled(0.05), zeros], rule).evidence.code).toBe('no-turn');
});
