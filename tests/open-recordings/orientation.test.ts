import { expect, test } from 'vitest';
import { rotationTiltErrorDeg, translationTilt, verticalWayMm } from '../support/open-orientation.ts';

test('in slow rotation the accelerometer shows gravity within 3 degrees of the optics', () => {
  expect(rotationTiltErrorDeg()).toBeLessThan(3);
});

test.each([0, 1] as const)(
  'about axis %i the gyroscope brings tilt within 2 degrees while the sensor is shaken',
  (axis) => {
    const { alone, fused } = translationTilt(axis);
    expect(fused.count).toBeGreaterThan(2000);
    expect(fused.rmse).toBeLessThan(2);
    expect(fused.rmse).toBeLessThan(alone.rmse / 3);
  },
);

test('vertical way between turning points is within 20 mm of the optics on ways of several hundred', () => {
  const way = verticalWayMm();
  expect(way.segments).toBeGreaterThanOrEqual(10);
  expect(way.rmse).toBeLessThan(20);
  expect(way.r).toBeGreaterThan(0.99);
});
