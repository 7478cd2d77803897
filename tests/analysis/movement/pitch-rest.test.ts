import { expect, test } from 'vitest';
import { restEvidence } from '../../../packages/analysis/src/movement/pitch-rest.ts';

const rule = { windowS: 0.5, toleranceRad: 0.035, enoughS: 1.5 };
/** Two seconds of rest at 0.2 rad, four cosine humps of the given size, two seconds of rest. */
const humps = (size: number): Float64Array =>
  Float64Array.from({ length: 1200 }, (_, i) =>
    i < 200 || i >= 1000 ? 0.2 : 0.2 + (size / 2) * (1 - Math.cos((2 * Math.PI * (i - 200)) / 200)),
  );

test('rest is where the longest stillness is, and movement goes up from there', () => {
  const found = restEvidence(humps(0.6), 100, rule);
  expect(Math.abs(found.level - 0.2)).toBeLessThan(1e-9);
  expect(found.upward).toBe(1);
});

test('movement below rest says that the sense is wrong', () => {
  expect(restEvidence(humps(-0.6), 100, rule).upward).toBe(-1);
});

test('without any rest nothing is said of the side', () => {
  const endless = Float64Array.from({ length: 600 }, (_, i) => Math.sin(i / 20));
  expect(restEvidence(endless, 100, rule).upward).toBe(0);
});
