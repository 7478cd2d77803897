import type { MotionSign } from './motion-sign.ts';

type Triple = readonly [number, number, number];

/** What one event tells, in the axes of the device: x to the right of its screen, y to the top, z out of it. */
export interface MotionReading {
  /** specific force [m/s2] */
  readonly acceleration: Triple;
  /** turning rate about the same axes; null when the device has no gyroscope [rad/s] */
  readonly turning: Triple | null;
}

/** What is read of an event of the browser. */
export interface MotionEventLike {
  readonly accelerationIncludingGravity: {
    readonly x: number | null;
    readonly y: number | null;
    readonly z: number | null;
  } | null;
  readonly rotationRate: {
    readonly alpha: number | null;
    readonly beta: number | null;
    readonly gamma: number | null;
  } | null;
}

function triple(values: readonly (number | null | undefined)[]): Triple | null {
  const [x, y, z] = values;
  return x == null || y == null || z == null ? null : [x, y, z];
}

const radians = Math.PI / 180;

/**
 * The reading in an event; null when it tells no acceleration, as the one event of a machine without a sensor.
 *
 * Turning comes in degrees a second, alpha about x, beta about y and gamma about z: all browsers do so, and the draft was
 * changed to say it. It follows the right-hand rule whatever the sign of the accelerations.
 *
 * Source: W3C Device Orientation and Motion, draft; its issue 44 and pull request 43 for the axes of turning. That the sign of
 * turning is the same everywhere is common practice, no source.
 */
export function motionReading(event: MotionEventLike, sign: MotionSign): MotionReading | null {
  const { accelerationIncludingGravity: force, rotationRate: rate } = event;
  const acceleration = triple([force?.x, force?.y, force?.z]);
  if (acceleration === null) return null;
  const turning = triple([rate?.alpha, rate?.beta, rate?.gamma]);
  const signed = (value: number): number => (value === 0 ? 0 : sign * value);
  return {
    acceleration: [signed(acceleration[0]), signed(acceleration[1]), signed(acceleration[2])],
    turning: turning && [turning[0] * radians, turning[1] * radians, turning[2] * radians],
  };
}
