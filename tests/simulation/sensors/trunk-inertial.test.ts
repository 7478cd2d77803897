import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../../packages/simulation/src/fault-draw.ts';
import { faultTable } from '../../../packages/simulation/src/fault-table.ts';
import { standardGravity } from '../../../packages/simulation/src/gravity.ts';
import { Random } from '../../../packages/simulation/src/random.ts';
import { trunkInertial } from '../../../packages/simulation/src/sensors/trunk-inertial.ts';
import { cosineCycles, worldOfPitch } from '../../support/simulated-worlds.ts';

const still = { ...drawFaults(faultTable, 'clean', new Random(1, 0), {}), trunkWobble: 0 };

describe('an accelerometer at the sacrum', () => {
  test('reads gravity plus the acceleration of the body, whose sum over a cycle is nothing', () => {
    const world = worldOfPitch(2, () => 0);
    const rise = cosineCycles(0.06, 2);
    world.bodyM.set(world.bodyM.map((_, i) => rise(i / world.sampleRateHz)));
    const { force } = trunkInertial(world, still, new Random(1, 0));
    expect(Math.round(1000 * (Math.max(...force[2]) - standardGravity)) / 1000).toBe(0.296);
    const mean = force[2].reduce((sum, value) => sum + value, 0) / world.count;
    expect(Math.abs(mean - standardGravity)).toBeLessThan(1e-3);
  });

  test('a lean takes gravity from the vertical axis and leaves its size', () => {
    const world = worldOfPitch(1, () => 0);
    world.trunkPitchRad.fill(0.1);
    const { force } = trunkInertial(world, still, new Random(1, 0));
    expect(Math.abs(force[0][250] + standardGravity * Math.sin(0.1))).toBeLessThan(1e-9);
    expect(Math.abs(Math.hypot(force[0][250], force[2][250]) - standardGravity)).toBeLessThan(1e-9);
  });

  test('wobbles as much as asked', () => {
    const world = worldOfPitch(200, () => 0);
    const faults = { ...still, trunkWobble: 0.1, wobbleCornerHz: 3 };
    const { force } = trunkInertial(world, faults, new Random(1, 0));
    const variance = force[2].reduce((sum, value) => sum + (value - standardGravity) ** 2, 0) / world.count;
    // two equal poles pass white noise of density D like an ideal filter of width pi/4 times the corner
    expect(Math.abs(variance / (0.01 * 3 * (Math.PI / 4)) - 1)).toBeLessThan(0.15);
  });
});
