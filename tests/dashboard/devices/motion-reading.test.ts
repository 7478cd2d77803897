import { expect, test } from 'vitest';
import { motionReading } from '../../../apps/dashboard/src/devices/motion-reading.ts';

const force = (x: number | null, y: number | null, z: number | null) => ({ x, y, z });
const rate = (alpha: number | null, beta: number | null, gamma: number | null) => ({ alpha, beta, gamma });

test('alpha turns about x, beta about y, gamma about z, in radians', () => {
  const event = { accelerationIncludingGravity: force(1, 2, 9.8), rotationRate: rate(180, -90, 0) };
  expect(motionReading(event, 1)).toEqual({ acceleration: [1, 2, 9.8], turning: [Math.PI, -Math.PI / 2, 0] });
});

test('the opposite sign turns the accelerations round and leaves the turning, and makes no negative zero', () => {
  const event = { accelerationIncludingGravity: force(0, -2, -9.8), rotationRate: rate(180, 0, 0) };
  expect(motionReading(event, -1)).toEqual({ acceleration: [0, 2, 9.8], turning: [Math.PI, 0, 0] });
});

test('without a gyroscope there is no turning, and it is not nought', () => {
  const accelerationIncludingGravity = force(0, 0, 9.8);
  for (const rotationRate of [null, rate(null, null, null), rate(1, null, 2)]) {
    expect(motionReading({ accelerationIncludingGravity, rotationRate }, 1)?.turning).toBeNull();
  }
});

test('an event without accelerations is no reading', () => {
  for (const accelerationIncludingGravity of [null, force(null, null, null), force(1, null, 2)]) {
    expect(motionReading({ accelerationIncludingGravity, rotationRate: rate(1, 2, 3) }, 1)).toBeNull();
  }
});
