import { expect, test } from 'vitest';
import { drawFaults } from '../../../packages/simulation/src/fault-draw.ts';
import { footMotion } from '../../../packages/simulation/src/hops/foot-motion.ts';
import { hopBody } from '../../../packages/simulation/src/hops/hop-body.ts';
import { hopTable } from '../../../packages/simulation/src/hops/hop-table.ts';
import { Random } from '../../../packages/simulation/src/random.ts';

const faults = drawFaults(hopTable, 'clean', new Random(1, 1), {});
const body = hopBody({ count: 10, massKg: 70, stiffnessNpm: 15_000, flightS: 0.22 }, faults, new Random(1, 2));
const motion = footMotion(body, faults, new Random(1, 3));
const norm = (i: number): number => Math.hypot(motion.force[0][i], motion.force[1][i], motion.force[2][i]);

test('a foot that stands feels gravity and does not turn', () => {
  expect(norm(1000)).toBeCloseTo(9.80665, 6);
  expect(motion.turn[1][1000]).toBeCloseTo(0, 9);
});

test('the heel is turned up at take-off and thrown down at landing', () => {
  const at = (timeS: number): number => motion.turn[1][Math.round(timeS * body.sampleRateHz)];
  for (const hop of body.hops.slice(1)) {
    expect(at(hop.takeOffS - 0.01)).toBeGreaterThan(2);
    expect(at(hop.landsAgainS + 0.015)).toBeLessThan(-2);
    // late in the flight it feels far less than gravity
    expect(norm(Math.round((hop.landsAgainS - 0.05) * body.sampleRateHz))).toBeLessThan(7);
  }
});
