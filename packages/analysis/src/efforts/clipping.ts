import type { AcceptRule } from './effort-settings.ts';

/**
 * Whether a stretch of readings was cut off at a limit of the sensor: they stay at the very same greatest value for a while,
 * and far more of them lie there than at the value below. With the range given, a reading at its end is enough.
 *
 * @param samples - readings as they came, pulls upwards [unit of samples]
 * @param sampleRateHz - samples per second [Hz]
 * @param limit - end of the range of the sensor in the direction of pulls; null when not known [unit of samples]
 * @param rule - run and pile, see {@link AcceptRule} [-]
 * @returns true when it was [-]
 *
 * Source: ours
 */
export function isClipped(
  samples: Float64Array,
  sampleRateHz: number,
  limit: number | null,
  rule: Pick<AcceptRule, 'clipRunS' | 'clipPile'>,
): boolean {
  let top = -Infinity;
  let below = -Infinity;
  for (const value of samples) {
    if (value > top) {
      below = top;
      top = value;
    } else if (value < top && value > below) below = value;
  }
  if (limit !== null && top >= limit) return true;
  let [atTop, atBelow, run, longest] = [0, 0, 0, 0];
  for (const value of samples) {
    if (value === top) atTop++;
    if (value === below) atBelow++;
    run = value === top ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest >= Math.max(3, rule.clipRunS * sampleRateHz) && atTop > rule.clipPile * atBelow;
}
