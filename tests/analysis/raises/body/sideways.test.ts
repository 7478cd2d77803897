import { expect, test } from 'vitest';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { learnSideways, sidewaysRatio } from '../../../../packages/analysis/src/raises/body/sideways.ts';

const bank = templateBank([{ fromS: 1, toS: 1, durationStep: 1, holdShares: [0], fallRatios: [1] }], 20);

test('the usual level speaks a little against other movement, ten spreads above it strongly for it', () => {
  const [usual, quiet, far] = sidewaysRatio(Float64Array.of(-3, -9, 2), { level: -3, spread: 0.5 }, 1);
  expect(usual).toBeLessThan(0);
  expect(quiet).toBe(usual);
  expect(far).toBeGreaterThan(3);
});

test('the level is that of the middles of repetitions, and two repetitions are too few', () => {
  const logPower = Float64Array.from({ length: 200 }, (_, i) => (i % 40 === 10 ? -2 : -8));
  const repetitions = [0, 40, 80, 120].map((cell) => ({ cell, template: 0, follows: true }));
  expect(learnSideways(logPower, bank, [{ repetitions, other: [] }])).toEqual({ level: -2, spread: 0.4 });
  expect(learnSideways(logPower, bank, [{ repetitions: repetitions.slice(0, 2), other: [] }])).toBeUndefined();
});
