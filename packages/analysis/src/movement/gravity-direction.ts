import { median } from '../signal/order-statistics.ts';
import { dot, unit, type Vector, type VectorSignal } from './orientation.ts';

/**
 * Share of a recording in which gravity has one direction, as the sensor sees it.
 *
 * Means over a window are compared with the direction that is usual; someone who rises on the toes turns foot and trunk
 * away from it for moments only. A sensor in a hand or on a loose strap has no usual direction.
 *
 * @param acceleration - specific force of three axes, n >= 1 [m/s2]
 * @param samplesInWindow - samples over which movement averages out, >= 1 [-]
 * @param withinRad - angle from the usual direction that counts as the same [rad]
 * @returns share of the windows, 0 when there is no usual direction [-]
 *
 * Source: ours
 */
export function steadyShare(acceleration: VectorSignal, samplesInWindow: number, withinRad: number): number {
  const windows = Math.max(1, Math.floor(acceleration[0].length / samplesInWindow));
  const directions: Vector[] = [];
  for (let w = 0; w < windows; w++) {
    const [from, to] = [w * samplesInWindow, Math.min(acceleration[0].length, (w + 1) * samplesInWindow)];
    const mean = acceleration.map((axis) => axis.subarray(from, to).reduce((sum, value) => sum + value, 0));
    const direction = unit([mean[0], mean[1], mean[2]]);
    if (direction !== undefined) directions.push(direction);
  }
  if (directions.length === 0) return 0;
  const middle = (axis: 0 | 1 | 2): number => median(directions.map((one) => one[axis]));
  const usual = unit([middle(0), middle(1), middle(2)]);
  if (usual === undefined) return 0;
  return directions.filter((one) => dot(one, usual) >= Math.cos(withinRad)).length / windows;
}
