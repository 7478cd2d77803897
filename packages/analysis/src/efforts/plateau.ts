import { leastSquaresLine } from '../signal/line.ts';
import type { Figure } from './figure.ts';

/** The part of an effort near its peak. */
export interface Plateau {
  readonly from: number;
  readonly to: number;
}

/**
 * Stretch around the peak in which a force stays within a share of it.
 *
 * @param smooth - low-passed force above the resting level [N or N.m]
 * @param top - index of the peak [index]
 * @param share - of the peak that it may fall short [-]
 * @returns half-open range [index]
 *
 * Source: common practice, no source (within 10 % of the peak)
 */
export function plateauAround(smooth: Float64Array, top: number, share: number): Plateau {
  const least = (1 - share) * smooth[top];
  let from = top;
  while (from > 0 && smooth[from - 1] >= least) from--;
  let to = top + 1;
  while (to < smooth.length && smooth[to] >= least) to++;
  return { from, to };
}

/**
 * Unsteadiness of a held force: standard deviation about its own straight line, over its mean (coefficient of variation).
 *
 * @param smooth - low-passed force above the resting level [N or N.m]
 * @param plateau - the held part [index]
 * @param sampleRateHz - samples per second [Hz]
 * @param noise - standard deviation of the noise in the low-passed force; its variance is taken off [unit of smooth]
 * @returns the share and its standard uncertainty; null for less than half a second [-]
 *
 * Source: coefficient of variation of force: common practice, no source
 */
export function unsteadiness(
  smooth: Float64Array,
  plateau: Plateau,
  sampleRateHz: number,
  noise: number,
): Figure | null {
  const count = plateau.to - plateau.from;
  if (count < Math.max(8, sampleRateHz / 2)) return null;
  const part = smooth.subarray(plateau.from, plateau.to);
  const places = Float64Array.from(part, (_, i) => i);
  const line = leastSquaresLine(places, part);
  let [sum, total] = [0, 0];
  for (let i = 0; i < count; i++) {
    sum += (part[i] - line.intercept - line.slope * i) ** 2;
    total += part[i];
  }
  const mean = total / count;
  const value = Math.sqrt(Math.max(0, sum / count - noise * noise)) / mean;
  // a wave of a few hertz gives some ten independent readings a second
  const independent = Math.max(2, (10 * count) / sampleRateHz);
  return { value, u: Math.hypot(value, noise / mean) / Math.sqrt(2 * independent) };
}
