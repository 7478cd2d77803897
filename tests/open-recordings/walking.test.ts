import { expect, test } from 'vitest';
import { peaksPerStride, walkingAgainstOptics } from '../support/open-recordings.ts';

// Walking is quicker and wider than a heel raise (pitch from -30 to 70 degrees), so these bounds are loose for one.
test.each(['left', 'right'] as const)('foot pitch on the %s follows the markers within 3 degrees', (side) => {
  const { pitchDeg, flatPhases } = walkingAgainstOptics(side, true);
  expect(flatPhases).toBeGreaterThanOrEqual(20);
  expect(pitchDeg.count).toBeGreaterThan(3000);
  expect(pitchDeg.rmse).toBeLessThan(3);
  expect(pitchDeg.r).toBeGreaterThan(0.99);
});

test.each(['left', 'right'] as const)('heel height on the %s follows the marker within 11 mm', (side) => {
  const { heightMm } = walkingAgainstOptics(side, true);
  expect(heightMm.count).toBeGreaterThan(1500);
  expect(heightMm.rmse).toBeLessThan(11);
  expect(heightMm.r).toBeGreaterThan(0.95);
});

test('the accelerometer alone cannot follow walking, and the gyroscope is what makes the difference', () => {
  const alone = walkingAgainstOptics('left', false).pitchDeg;
  const both = walkingAgainstOptics('left', true).pitchDeg;
  expect(alone.rmse).toBeGreaterThan(5 * both.rmse);
});

test.each([
  ['left', 28],
  ['right', 30],
] as const)('each labelled stride of the %s foot holds exactly one height peak', (side, strides) => {
  expect(peaksPerStride(side)).toEqual(Array.from({ length: strides }, () => 1));
});
