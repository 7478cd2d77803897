import { describe, expect, test } from 'vitest';
import { standardGravity } from '../../../packages/simulation/src/gravity.ts';
import { groundForce } from '../../../packages/simulation/src/sensors/platform.ts';
import { simulateSet } from '../../../packages/simulation/src/simulate-set.ts';
import { cosineCycles, worldOfPitch } from '../../support/simulated-worlds.ts';

describe('force under the foot', () => {
  test('a 6 cm rise in a 2 s cycle needs 0.296 m/s2, which is 20.7 N or 3.0 % of body weight at 70 kg', () => {
    const world = worldOfPitch(4, () => 0);
    const rise = cosineCycles(0.06, 2);
    world.bodyM.set(world.bodyM.map((_, i) => rise(i / world.sampleRateHz)));
    const force = groundForce(world, 70, new Float64Array(world.count));
    const ripple = Math.max(...force) - 70 * standardGravity;
    expect(Math.round((1000 * ripple) / 70) / 1000).toBe(0.296);
    expect(Math.round(10 * ripple) / 10).toBe(20.7);
    expect(Math.round((1000 * ripple) / (70 * standardGravity)) / 1000).toBe(0.03);
  });

  test('its mean over a whole cycle is body weight', () => {
    const world = worldOfPitch(2, cosineCycles(0.6, 2));
    const force = groundForce(world, 80, new Float64Array(world.count));
    const mean = force.reduce((sum, value) => sum + value, 0) / force.length;
    expect(Math.abs(mean - 80 * standardGravity)).toBeLessThan(0.2);
  });

  test('its work on the body over each rise is weight times rise', () => {
    const { truth, trace } = simulateSet({ placement: 'platform', level: 'clean', seed: 4, faults: quietFaults });
    const { timesS, channels } = trace.groups[0];
    const { bodyMassKg } = truth.person;
    const weight = bodyMassKg * standardGravity;
    for (const { startS, highFromS, bodyRiseM } of truth.repetitions) {
      let [velocity, work] = [0, 0];
      for (let i = 1; i < timesS.length; i++) {
        if (timesS[i] <= startS || timesS[i] > highFromS) continue;
        const dt = timesS[i] - timesS[i - 1];
        const force = (channels[0].samples[i] + channels[0].samples[i - 1]) / 2;
        const next = velocity + ((force - weight) / bodyMassKg) * dt;
        work += (force * dt * (velocity + next)) / 2;
        velocity = next;
      }
      expect(Math.abs(work / (weight * bodyRiseM) - 1)).toBeLessThan(0.03);
    }
  });

  test('does not pull', () => {
    const world = worldOfPitch(1, () => 0);
    expect(Math.min(...groundForce(world, 70, new Float64Array(world.count).fill(-30)))).toBe(0);
  });
});

const quietFaults = {
  platformWobble: 1e-9,
  forceNoiseN: 0,
  fatigueLoss: 0,
  heightSpread: 0,
  tempoSpread: 0,
  partSpread: 0,
};
