import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../../packages/simulation/src/fault-draw.ts';
import { faultTable } from '../../../packages/simulation/src/fault-table.ts';
import { standardGravity } from '../../../packages/simulation/src/gravity.ts';
import { Random } from '../../../packages/simulation/src/random.ts';
import { inertialTrace } from '../../../packages/simulation/src/sensors/inertial.ts';
import { worldOfPitch } from '../../support/simulated-worlds.ts';

const still = {
  ...drawFaults(faultTable, 'clean', new Random(1, 0), {}),
  accelerometerNoise: 0,
  gyroscopeNoise: 0,
};
const world = worldOfPitch(4, () => 0);
const constant = (value: number): Float64Array => new Float64Array(world.count).fill(value);
const standing = { force: [constant(0), constant(0), constant(standardGravity)] } as const;

describe('an inertial sensor in any mounting', () => {
  test('reads gravity at rest, spread over its axes', () => {
    for (let seed = 0; seed < 10; seed++) {
      const { channels } = inertialTrace(standing, world, still, undefined, [100, 100], new Random(seed, 0)).groups[0];
      expect(channels.map(({ quantity, axis }) => `${quantity} ${axis}`)).toEqual([
        'acceleration x',
        'acceleration y',
        'acceleration z',
      ]);
      const size = Math.hypot(...channels.map((channel) => channel.samples[50]));
      expect(Math.abs(size - standardGravity)).toBeLessThan(1e-4);
    }
  });

  test('a slip turns what it reads by the angle, from its instant on', () => {
    const slip = { atS: 2, angleRad: 0.1 };
    const { timesS, channels } = inertialTrace(standing, world, still, slip, [100, 100], new Random(1, 0)).groups[0];
    const dot = (i: number, j: number): number =>
      channels.reduce((sum, { samples }) => sum + samples[i] * samples[j], 0) / standardGravity ** 2;
    const before = timesS.findIndex((timeS) => timeS > 1);
    const after = timesS.findIndex((timeS) => timeS > 3);
    expect(Math.abs(Math.acos(dot(before, after)) - 0.1)).toBeLessThan(1e-3);
    expect(Math.abs(dot(before, before + 10) - 1)).toBeLessThan(1e-4);
  });

  test('a gyroscope feels its own slip: what it reads adds up to the angle', () => {
    const slip = { atS: 2, angleRad: 0.1 };
    const turning = { ...standing, turn: [constant(0), constant(0), constant(0)] as const };
    const faults = { ...still, gyroscopeBias: 0, gyroscopeDrift: 0, stampJitter: 0 };
    const { timesS, channels } = inertialTrace(turning, world, faults, slip, [200, 200], new Random(1, 0)).groups[0];
    const sums = channels
      .slice(3)
      .map(({ samples }) =>
        samples.reduce((sum, rate, i) => sum + (i > 0 ? rate * (timesS[i] - timesS[i - 1]) : 0), 0),
      );
    expect(Math.abs(Math.hypot(...sums) - 0.1)).toBeLessThan(2e-3);
  });

  test('gyroscope bias stays, and drifts as asked', () => {
    const faults = { ...still, gyroscopeBias: 0.02, gyroscopeDrift: 0.5 };
    const turning = { ...standing, turn: [constant(0), constant(0), constant(0)] as const };
    const { timesS, channels } = inertialTrace(turning, world, faults, undefined, [100, 100], new Random(2, 0))
      .groups[0];
    for (const { samples } of channels.slice(3)) {
      expect(Math.abs(samples[0])).toBeLessThan(2.5 * 0.02 + 1e-4);
      const last = samples.length - 1;
      const middle = Math.floor(last / 2);
      const slope = (samples[last] - samples[0]) / (timesS[last] - timesS[0]);
      expect(Math.abs(slope)).toBeLessThan((2.5 * 0.5) / 60 + 1e-4);
      expect(Math.abs(samples[middle] - samples[0] - slope * timesS[middle])).toBeLessThan(1e-4);
    }
  });

  test('stops at its range', () => {
    const faults = { ...still, accelerometerRange: 5 };
    const { channels } = inertialTrace(standing, world, faults, undefined, [100, 100], new Random(3, 0)).groups[0];
    for (const { samples } of channels) for (const value of samples) expect(Math.abs(value)).toBeLessThanOrEqual(5);
  });
});
