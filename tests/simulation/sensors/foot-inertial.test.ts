import { describe, expect, test } from 'vitest';
import { standardGravity } from '../../../packages/simulation/src/gravity.ts';
import { footInertial } from '../../../packages/simulation/src/sensors/foot-inertial.ts';
import { cosineCycles, worldOfPitch } from '../../support/simulated-worlds.ts';

const degree = Math.PI / 180;

describe('an accelerometer on the foot', () => {
  test('at rest reads gravity along the tilted foot: heel up leans it to the heel', () => {
    const world = worldOfPitch(1, () => 30 * degree);
    const { force } = footInertial(world, { behindM: 0.1, aboveM: 0.05 }, false);
    expect(Math.abs(force[0][100] + standardGravity / 2)).toBeLessThan(1e-9);
    expect(Math.abs(force[2][100] - standardGravity * Math.cos(30 * degree))).toBeLessThan(1e-9);
  });

  // a 35 degree cosine rise read by the accelerometer alone, at the turning point
  test.each([
    [0.185, 4, 0.8],
    [0.185, 2, 3.3],
    [0.185, 1, 12.8],
    [0.1, 4, 0.4],
    [0.1, 2, 1.8],
    [0.1, 1, 7],
  ])(
    'at %d m above the pivot a cycle of %d s misreads the tilt at the bottom by %d degrees',
    (aboveM, cycleS, errorDeg) => {
      const world = worldOfPitch(3 * cycleS, cosineCycles(35 * degree, cycleS));
      const { force } = footInertial(world, { behindM: 0, aboveM }, false);
      const bottom = Math.round(cycleS * world.sampleRateHz);
      const read = Math.atan2(-force[0][bottom], force[2][bottom]);
      expect(world.pitchRad[bottom]).toBe(0);
      expect(Math.round((10 * -read) / degree) / 10).toBe(errorDeg);
    },
  );

  test('centripetal acceleration points along the foot to the pivot', () => {
    const turnRate = 2;
    const world = worldOfPitch(0.4, (timeS) => turnRate * timeS);
    const { force } = footInertial(world, { behindM: 0.15, aboveM: 0 }, false);
    const middle = Math.round(world.count / 2);
    const along = force[0][middle] + standardGravity * Math.sin(world.pitchRad[middle]);
    expect(Math.abs(along - 0.15 * turnRate * turnRate)).toBeLessThan(1e-4);
  });

  test('a sensor above the pivot reads phi - (r/g) phi"', () => {
    const world = worldOfPitch(2, cosineCycles(4 * degree, 2));
    const { force } = footInertial(world, { behindM: 0, aboveM: 0.05 }, false);
    for (const i of [100, 250, 500, 700]) {
      const read = Math.atan2(-force[0][i], force[2][i]);
      const bend = 2 * degree * Math.PI ** 2 * Math.cos(Math.PI * (i / 500));
      expect(Math.abs(read - (world.pitchRad[i] - (0.05 / standardGravity) * bend))).toBeLessThan(2e-5);
    }
  });
});

describe('a gyroscope on the foot', () => {
  test('integrates to the pitch, wherever it sits', () => {
    const world = worldOfPitch(2, cosineCycles(0.6, 2));
    for (const behindM of [0.05, 0.2]) {
      const { turn } = footInertial(world, { behindM, aboveM: 0.05 }, true);
      let pitch = 0;
      for (let i = 1; i <= 500; i++) pitch += (turn![1][i] + turn![1][i - 1]) / 2 / world.sampleRateHz;
      expect(Math.abs(pitch - 0.6)).toBeLessThan(1e-4);
    }
  });

  test('is left out when there is none', () => {
    const world = worldOfPitch(1, () => 0);
    expect(footInertial(world, { behindM: 0.1, aboveM: 0.05 }, false).turn).toBeUndefined();
  });
});
