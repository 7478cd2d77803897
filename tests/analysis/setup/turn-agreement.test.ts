import { describe, expect, test } from 'vitest';
import { turnAgreement } from '../../../packages/analysis/src/setup/turn-agreement.ts';
import { samplesOf, vectorOnGrid } from '../../support/open-recordings.ts';

/** A sensor that rocks about its x axis with gravity seen from it. */
function rocking(sign: 1 | -1, unit: number) {
  const timesS = Float64Array.from({ length: 1000 }, (_, i) => i / 100);
  const angle = timesS.map((timeS) => 0.5 * Math.sin(2 * timeS));
  const rate = timesS.map((timeS) => (sign * Math.cos(2 * timeS)) / unit);
  const zeros = new Float64Array(1000);
  // turned by the angle about x, the sensor sees up as (0, sin, cos)
  const acceleration = [zeros, angle.map((a) => 9.81 * Math.sin(a)), angle.map((a) => 9.81 * Math.cos(a))] as const;
  return turnAgreement(timesS, acceleration, [rate, zeros, zeros])!;
}

describe('gyroscope and gravity', () => {
  test('the ratio is the unit of the gyroscope', () => {
    const { scale, correlation } = rocking(1, Math.PI / 180);
    expect(scale / (Math.PI / 180)).toBeGreaterThan(0.97);
    expect(scale / (Math.PI / 180)).toBeLessThan(1.03);
    expect(correlation).toBeGreaterThan(0.99);
  });

  test('a mirrored axis turns against gravity', () => {
    expect(rocking(-1, 1).scale).toBeLessThan(-0.95);
  });

  test('an open recording of a sensor that was turned slowly, rad/s: 1 to 5 %', () => {
    const name = 'orientation-optical/rotation-imu.csv';
    const rateHz = 200;
    const acceleration = vectorOnGrid(name, 'acceleration', rateHz);
    const timesS = acceleration[0].map((_, i) => i / rateHz);
    const { scale, correlation } = turnAgreement(timesS, acceleration, vectorOnGrid(name, 'angular-velocity', rateHz))!;
    expect(Math.abs(scale - 1)).toBeLessThan(0.05);
    expect(correlation).toBeGreaterThan(0.95);
  });

  test('nothing that turns tells nothing', () => {
    const zeros = new Float64Array(500);
    const timesS = zeros.map((_, i) => i / 100);
    expect(turnAgreement(timesS, [zeros, zeros, zeros.map(() => 9.81)], [zeros, zeros, zeros])).toBeNull();
    expect(samplesOf('orientation-optical/rotation-imu.csv', 'angular-velocity').length).toBeGreaterThan(1000);
  });
});
