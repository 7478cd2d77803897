import type { Figure } from '../efforts/figure.ts';
import { mean, standardDeviation } from '../signal/moments.ts';
import { median } from '../signal/order-statistics.ts';
import type { Flight } from './hop.ts';
import type { ForceSignal } from './platform-flights.ts';

/** Mean of the force over a span, by straight lines between samples [N]. */
function meanForce({ timesS, force }: ForceSignal, fromS: number, toS: number): number {
  let sum = 0;
  for (let i = 1; i < timesS.length; i++) {
    const [a, b] = [Math.max(fromS, timesS[i - 1]), Math.min(toS, timesS[i])];
    if (timesS[i - 1] >= toS) break;
    if (!(b > a)) continue;
    const at = (timeS: number): number => {
      const share = (timeS - timesS[i - 1]) / (timesS[i] - timesS[i - 1]);
      return force[i - 1] * (1 - share) + force[i] * share;
    };
    sum += ((at(a) + at(b)) / 2) * (b - a);
  }
  return sum / (toS - fromS);
}

/**
 * Body weight by the hops themselves: whoever lands as he left has had his weight carried, on the whole, by the ground.
 * From the middle of one flight to the middle of the next the mean force is that weight, as far as both are equally high.
 *
 * @param signal - force at its own times [s, N]
 * @param flights - of one series [s]
 * @param zeroN - reading of the empty platform [N]
 * @param contactMostS - longer stays on the ground are left out [s]
 * @returns the weight with the standard uncertainty of the mean; undefined for fewer than three hops [N]
 *
 * Source: definition (impulse over a whole cycle)
 */
export function weightFromHops(
  signal: ForceSignal,
  flights: readonly Flight[],
  zeroN: number,
  contactMostS: number,
): Figure | undefined {
  const means: number[] = [];
  for (let k = 1; k < flights.length; k++) {
    const [before, after] = [flights[k - 1], flights[k]];
    if (before.landing === null || after.takeOff === null || before.takeOff === null || after.landing === null)
      continue;
    if (after.takeOff.atS - before.landing.atS > contactMostS) continue;
    const fromS = (before.takeOff.atS + before.landing.atS) / 2;
    const toS = (after.takeOff.atS + after.landing.atS) / 2;
    means.push(meanForce(signal, fromS, toS) - zeroN);
  }
  if (means.length < 3) return undefined;
  // a foot that stays away for long or a hand on the wall moves single hops
  const middle = median(means);
  const kept = means.filter((one) => Math.abs(one - middle) <= 0.25 * Math.abs(middle));
  if (kept.length < 3) return undefined;
  return { value: mean(kept), u: standardDeviation(kept) / Math.sqrt(kept.length) };
}
