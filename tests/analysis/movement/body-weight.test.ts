import { expect, test } from 'vitest';
import { bodyWeight } from '../../../packages/analysis/src/movement/body-weight.ts';

test('steady 686.5 N is the weight, without uncertainty', () => {
  const weight = bodyWeight(new Float64Array(500).fill(686.5), 100, 0, { fromS: 1, toS: 4 })!;
  expect(weight.weightN).toBeCloseTo(686.5, 9);
  expect(weight.uncertaintyN).toBeCloseTo(0, 9);
});

test('half-second means that alternate by 1 N over 6 blocks give sqrt(1.2 / 6) N', () => {
  // means +1 -1 +1 -1 +1 -1: variance 6/5
  const force = Float64Array.from({ length: 300 }, (_, i) => 700 + (Math.floor(i / 50) % 2 === 0 ? 1 : -1));
  const weight = bodyWeight(force, 100, 0, { fromS: 0, toS: 3 })!;
  expect(weight.weightN).toBeCloseTo(700, 9);
  expect(weight.uncertaintyN).toBeCloseTo(Math.sqrt(1.2 / 6), 9);
});

test('less than a second says nothing', () => {
  expect(bodyWeight(new Float64Array(500).fill(700), 100, 0, { fromS: 1, toS: 1.6 })).toBeUndefined();
});
