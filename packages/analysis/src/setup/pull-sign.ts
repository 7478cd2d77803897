import { median, quantile } from '../signal/order-statistics.ts';
import { type Guess, noGuess, weigh } from './guess.ts';
import type { GuessRule } from './setup-settings.ts';

export type SignEvidence = 'above-rest' | 'below-rest' | 'no-effort';

/** Odds of a sign by how far the efforts go to its side of the level at rest: fitted on simulated sensors; ours. */
const fitted = { bySkew: 6, byEnds: 3 };

/** Stretch at either end that shows the level at rest, as a share of the recording [-]; ours. */
const endShare = 0.05;

/** How far apart both ends may lie to be the same level, where the whole range is 2 [-]; ours. */
const endsApart = 0.6;

/** How near either end of the range a reading counts as there, from the middle 0 to the end 1 [-]; ours. */
const nearEnd = 0.6;

/** Least range over the scatter at rest that is an effort [-]; ours. */
const effortLeast = 10;

/**
 * Which way a reading goes under load, from a stretch with an effort in it: it rests at one end of its range, longer than at
 * the other, and begins and ends there.
 *
 * @param samples - reading in time order, n >= 1 [any unit]
 * @param noise - scatter of the reading at rest; no effort is seen within ten times it [unit of samples]
 * @param rule - when to ask, see {@link GuessRule} [-]
 * @returns up or down [-]
 * @throws {@link InputError} `too-short`; `not-finite`
 *
 * Source: ours
 */
export function pullSign(samples: Float64Array, noise: number, rule: GuessRule): Guess<'up' | 'down', SignEvidence> {
  const low = quantile(samples, rule.lowQuantile);
  const high = quantile(samples, rule.highQuantile);
  const range = high - low;
  if (!(range > effortLeast * noise)) return noGuess(['up', 'down'], { code: 'no-effort', figures: { range } });
  // where most of the time is spent: -1 at the low end, 1 at the high end
  const place = (value: number): number => (2 * value - low - high) / range;
  const count = Math.max(1, Math.round(endShare * samples.length));
  const start = place(median(samples.subarray(0, count)));
  const end = place(median(samples.subarray(samples.length - count)));
  // a load that was put on, or taken off, and stays so tells nothing: which of the two levels is rest is not known
  if (Math.abs(start - end) > endsApart) return noGuess(['up', 'down'], { code: 'no-effort', figures: { range } });
  let near = 0;
  for (const value of samples) near += place(value) < -nearEnd ? 1 : place(value) > nearEnd ? -1 : 0;
  const lead = (fitted.bySkew * near) / samples.length - fitted.byEnds * Math.max(-1, Math.min(1, (start + end) / 2));
  const code = lead >= 0 ? 'above-rest' : 'below-rest';
  return weigh(
    [
      ['up', lead / 2],
      ['down', -lead / 2],
    ],
    -Infinity,
    { code, figures: { range } },
    rule,
  );
}
