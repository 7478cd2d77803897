import { expect, test } from 'vitest';
import { drawFaults } from '../../../packages/simulation/src/fault-draw.ts';
import { hopBody } from '../../../packages/simulation/src/hops/hop-body.ts';
import { hopTable } from '../../../packages/simulation/src/hops/hop-table.ts';
import { Random } from '../../../packages/simulation/src/random.ts';

const faults = drawFaults(hopTable, 'clean', new Random(1, 1), { speedSpread: 0, stiffnessSpread: 0, speedLoss: 0 });
const body = hopBody({ count: 20, massKg: 70, stiffnessNpm: 15_000, flightS: 0.22 }, faults, new Random(1, 2));

test('every flight is a free fall of the planned time, every contact a spring of the planned stiffness', () => {
  expect(body.hops).toHaveLength(20);
  for (const hop of body.hops) expect(hop.flightS).toBeCloseTo(0.22, 9);
  expect(body.hops[0].contactS).toBeNull();
  for (const hop of body.hops.slice(1)) expect(hop.stiffnessNpm).toBeCloseTo(15_000, 6);
});

test('the force carries the weight over whole hops, and is nothing in the air', () => {
  const rate = body.sampleRateHz;
  const from = Math.round((body.hops[5].takeOffS + 0.11) * rate);
  const to = Math.round((body.hops[15].takeOffS + 0.11) * rate);
  const mean = body.force.subarray(from, to).reduce((sum, value) => sum + value, 0) / (to - from);
  expect(Math.abs(mean / (70 * 9.80665) - 1)).toBeLessThan(0.002);
  expect(body.force[from]).toBe(0);
});

test('force and height agree: mass times the second difference of height is force less weight', () => {
  const rate = body.sampleRateHz;
  // in the middle of contacts and of flights
  for (const hop of body.hops.slice(3, 9)) {
    for (const timeS of [hop.landS! + 0.3 * hop.contactS!, hop.takeOffS + 0.1]) {
      const i = Math.round(timeS * rate);
      const a = (body.height[i + 1] - 2 * body.height[i] + body.height[i - 1]) * rate * rate;
      expect(Math.abs(70 * (a + 9.80665) - body.force[i])).toBeLessThan(3);
    }
  }
});
