import { expect, test } from 'vitest';
import { slopeEstimate } from '../../../packages/analysis/src/raises/slope-estimate.ts';

test('two points give no slope, three a slope without bounds, five a slope with bounds', () => {
  const line = (n: number) => Array.from({ length: n }, (_, i) => ({ x: i + 1, y: 3 - 0.5 * i }));
  expect(slopeEstimate(line(2))).toBeNull();
  expect(slopeEstimate(line(3))).toEqual({ value: -0.5, low: null, high: null });
  expect(slopeEstimate(line(5))).toEqual({ value: -0.5, low: -0.5, high: -0.5 });
});

test('the example of Hollander, Wolfe and Chicken 9.1 has slope -0.05625', () => {
  const y = [1.26, 1.27, 1.12, 1.16, 1.03];
  const estimate = slopeEstimate(y.map((value, i) => ({ x: i + 1, y: value })));
  expect(estimate?.value).toBeCloseTo(-0.05625, 12);
  expect(estimate?.low).toBeLessThan(-0.05625);
  expect(estimate?.high).toBeGreaterThan(-0.05625);
});
