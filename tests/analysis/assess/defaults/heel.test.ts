import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';

const inDegrees = (angleRad: number): number => (angleRad * 180) / Math.PI;

test('angles are given in degrees and kept in radians', () => {
  const { pitch, steepestRad, tiltURad, tiltAccelerometerOnlyURad } = heelDefaults;
  expect(
    [steepestRad, tiltURad, tiltAccelerometerOnlyURad].map((angle) => Number(inDegrees(angle).toFixed(9))),
  ).toEqual([66, 0.35, 0.7]);
  for (const angle of [pitch.tiltSdRad, pitch.driftSdRad, pitch.slip.leastRad, pitch.rest.toleranceRad]) {
    // a number of degrees that was not converted would be above 6 degrees
    expect(inDegrees(angle)).toBeLessThan(6);
  }
});

test('the heel levers are 0.71 of a foot of 25.5 cm and of 32 cm, to the centimetre', () => {
  expect(Math.abs(heelDefaults.nominalHeelLeverM - 0.71 * 0.255)).toBeLessThan(0.005);
  expect(Math.abs(heelDefaults.longestHeelLeverM - 0.71 * 0.32)).toBeLessThan(0.005);
});

test('a forefoot is up when the heel is as low as at 4.5 degrees toes-up', () => {
  const { nominalHeelLeverM, belowFloorM } = heelDefaults;
  expect(inDegrees(Math.asin(belowFloorM / nominalHeelLeverM))).toBeCloseTo(4.5, 1);
});

test('limits lie in their order: sway, stillness, forefoot, least raise', () => {
  const { noise, stillRangeM, belowFloorM, leastHeightM } = heelDefaults;
  const rising = [noise.leastWhiteM, noise.leastSwayM, noise.usualSwayM, stillRangeM, belowFloorM, leastHeightM];
  expect(rising).toEqual([...rising].sort((a, b) => a - b));
});

test('the filters pass what the working grid can hold, each slower one below the quicker', () => {
  const { workingRateHz, movementCutoffHz, bumpCutoffHz, pitch } = heelDefaults;
  const falling = [workingRateHz / 2, pitch.movementCutoffHz, movementCutoffHz, bumpCutoffHz, pitch.tempoCutoffHz];
  expect(falling).toEqual([...falling].sort((a, b) => b - a));
});
