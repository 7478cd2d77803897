import { leastSquaresLine } from '../signal/line.ts';
import type { AcceptRule } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import type { SmoothPull } from './onset.ts';

/** What the force did just before an onset. */
export interface BeforeOnset {
  /** how far it went below the resting level [N or N.m] */
  readonly dip: Figure;
  /** size of its mean slope [N/s or N.m/s] */
  readonly creep: Figure;
  /** greatest departure from the resting level, either way */
  readonly depth: number;
  /** greatest force */
  readonly most: number;
}

/**
 * What the force did just before an onset: dip and creeping tension.
 *
 * @param pull - low-passed force above the resting level [N or N.m]
 * @param onsetS - the onset [s]
 * @param noise - standard deviation of the low-passed force at rest [unit of pull]
 * @param rule - how long before the onset is looked at, and the part next to it that the low-pass mixes with the rise [s]
 * @returns dip, slope and departure; null when too little was recorded before the onset [unit of pull, per s]
 *
 * Source: ours
 */
export function beforeOnset(
  pull: SmoothPull,
  onsetS: number,
  noise: number,
  rule: Pick<AcceptRule, 'beforeS' | 'blurredS'>,
): BeforeOnset | null {
  const { startS, sampleRateHz, values } = pull;
  const { beforeS: windowS, blurredS } = rule;
  const from = Math.max(0, Math.round((onsetS - windowS - startS) * sampleRateHz));
  const to = Math.min(values.length, Math.round((onsetS - blurredS - startS) * sampleRateHz));
  if (to - from < 4 || (to - from) / sampleRateHz < windowS / 2) return null;
  const part = values.subarray(from, to);
  const line = leastSquaresLine(
    Float64Array.from(part, (_, i) => i / sampleRateHz),
    part,
  );
  const least = Math.min(...part);
  const most = Math.max(...part);
  const lengthS = (to - from) / sampleRateHz;
  // low-passed noise gives some forty independent readings a second
  const readings = Math.max(3, 40 * lengthS);
  return {
    dip: { value: Math.max(0, -least), u: noise },
    creep: { value: Math.abs(line.slope), u: (Math.sqrt(12 / readings) * noise) / lengthS },
    depth: Math.max(-least, most),
    most,
  };
}
