import { expect, test } from 'vitest';
import { drawPerson } from '../../packages/simulation/src/person.ts';
import { Random } from '../../packages/simulation/src/random.ts';

const habits = { ownTempoChance: 0.1, beatSpread: 0.2, longHoldChance: 0.5 };

test('people differ in every respect, within what people are', () => {
  const people = Array.from({ length: 2000 }, (_, seed) => drawPerson(new Random(seed, 1), habits));
  for (const { bodyMassKg, foot, shares, cycleS } of people) {
    expect(bodyMassKg).toBeGreaterThanOrEqual(50);
    expect(bodyMassKg).toBeLessThan(100);
    expect(foot.heelLeverM).toBeGreaterThan(0.155);
    expect(foot.heelLeverM).toBeLessThan(0.215);
    expect(cycleS).toBeGreaterThanOrEqual(0.6);
    expect(cycleS).toBeLessThanOrEqual(6);
    expect(Math.abs(shares[0] + shares[1] + shares[2] + shares[3] - 1)).toBeLessThan(1e-12);
    expect(shares[1]).toBeLessThan(0.36);
  }
  const cycles = people.map(({ cycleS }) => cycleS).sort((a, b) => a - b);
  expect(Math.abs(cycles[1000] - 2)).toBeLessThan(0.05);
  expect(new Set(people.map(({ upShape }) => upShape.kind)).size).toBe(5);
});
