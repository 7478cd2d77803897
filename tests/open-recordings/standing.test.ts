import { expect, test } from 'vitest';
import { massesKg } from '../support/open-counts.ts';
import { samplesOf } from '../support/open-recordings.ts';
import { inRun } from '../support/runs.ts';

const GRAVITY = 9.80665; // m/s2, ISO 80000-3

// The scale reads to 0.1 kg, but plate and scale of one laboratory differ by up to 2.8 % in these recordings.
test('the mass read from quiet standing lies within 3 % of the scale', () => {
  const masses = massesKg(inRun(1, Infinity));
  expect(masses).toHaveLength(inRun(2, 5));
  for (const { name, platform, scale } of masses) {
    expect(Math.abs(platform - scale) / scale, `${name}: ${platform} kg, scale ${scale} kg`).toBeLessThan(0.03);
  }
});

test('it agrees with the plain mean of the force far better than plate and scale agree', () => {
  const masses = new Map(massesKg(inRun(1, Infinity)).map(({ name, platform }) => [name, platform]));
  for (const file of inRun(['BDS00001.csv'], ['BDS00001.csv', 'BDS00013.csv', 'BDS00026.csv'])) {
    const force = samplesOf(`standing-one-plate/${file}`, 'force');
    const meanKg = force.reduce((sum, value) => sum + value, 0) / force.length / GRAVITY;
    expect(Math.abs((masses.get(file) ?? 0) / meanKg - 1)).toBeLessThan(0.003);
  }
});
