import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { otherMovementRatio } from '../../../../packages/analysis/src/raises/body/other-movement.ts';
import { whiten } from '../../../../packages/analysis/src/raises/body/whitening.ts';

const none = new Float64Array(0);

function ratioOf(samples: readonly number[], present: readonly number[], noiseVariance: number): Float64Array {
  const whitened = whiten(Float64Array.from(samples), Uint8Array.from(present), none);
  return otherMovementRatio(whitened, noiseVariance, bodyDefaults);
}

test('it is the log ratio of two densities: a mixture of three sizes over the noise', () => {
  const variance = 0.0004;
  const density = (x: number, v: number): number => Math.exp((-x * x) / (2 * v)) / Math.sqrt(2 * Math.PI * v);
  // five and twenty-five times the noise of 0.02, and steps of 1.5 m/s2
  const other = (x: number): number => (density(x, 0.1 ** 2) + density(x, 0.5 ** 2) + density(x, 1.5 ** 2)) / 3;
  const samples = [0, 0.01, -0.05, 0.1, -0.3, 0.5];
  const expected = samples.map((x) => Math.log(other(x) / density(x, variance)));
  const ratio = ratioOf(samples, Array<number>(samples.length).fill(1), variance);
  ratio.forEach((value, i) => expect(value).toBeCloseTo(expected[i], 9));
});

test('stillness speaks for standing, a step for other movement, a cell without data for neither', () => {
  const ratio = ratioOf([0, 2, 2], [1, 1, 0], 0.0004);
  expect(ratio[0]).toBeLessThan(-1);
  expect(ratio[1]).toBeGreaterThan(100);
  expect(ratio[2]).toBe(0);
});

test('in loud noise a step stays larger than the noise', () => {
  // 25 times a noise of 1 m/s2 is more than the usual step: the largest of the three sizes grows with it
  const [far] = ratioOf([40], [1], 1);
  expect(far).toBeGreaterThan(700);
});
