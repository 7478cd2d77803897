import { expect, test } from 'vitest';
import { verticalAcceleration } from '../../../packages/analysis/src/movement/lever-arm.ts';
import { estimateBehind } from '../../../packages/analysis/src/movement/lever-arm-estimate.ts';

const prior = { behindM: 0.1, behindSdM: 0.06, aboveM: 0.05, accelerationSd: 0.1 };
const tilt = Float64Array.from({ length: 1000 }, (_, i) => 0.3 * (1 - Math.cos((2 * Math.PI * i) / 150)));
const known = new Float64Array(1000).fill(1);

test('the distance is read from the lift that the turn gives the sensor', () => {
  const excess = verticalAcceleration(tilt, 100, { behindM: 0.17, aboveM: 0.05 }).map((value) => value + 0.2);
  const found = estimateBehind(tilt, excess, known, 100, prior);
  expect(Math.abs(found.behindM - 0.17)).toBeLessThan(0.002);
  expect(found.agreement).toBeGreaterThan(0.99);
});

test('a tilt of the wrong sense disagrees', () => {
  const excess = verticalAcceleration(tilt, 100, { behindM: 0.17, aboveM: 0 });
  const found = estimateBehind(
    tilt.map((value) => -value),
    excess,
    known,
    100,
    prior,
  );
  expect(found.agreement).toBeLessThan(-0.9);
});

test('without any movement or any sample the usual distance stands', () => {
  const flat = new Float64Array(1000);
  expect(estimateBehind(flat, flat, known, 100, prior)).toEqual({ behindM: 0.1, agreement: 0 });
  expect(estimateBehind(tilt, tilt, flat, 100, prior).behindM).toBe(0.1);
});
