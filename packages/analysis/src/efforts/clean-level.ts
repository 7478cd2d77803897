import { lowPassZeroPhase } from '../signal/lowpass.ts';
import { mean } from '../signal/moments.ts';
import { runningMedian } from './coarse-level.ts';
import type { MeasureMethod } from './effort-settings.ts';

/** A held force without knocks. */
export interface CleanLevel {
  /** samples with knocks replaced by what the low-pass says there */
  readonly samples: Float64Array;
  /** the same, low-passed */
  readonly smooth: Float64Array;
  /** samples that were replaced [-] */
  readonly replaced: number;
}

/** Which samples lie in a knock: the mean over a few of them is too far from the smooth course. */
function knocked(samples: Float64Array, smooth: Float64Array, half: number, limit: number): Uint8Array {
  const sums = new Float64Array(samples.length + 1);
  for (let i = 0; i < samples.length; i++) sums[i + 1] = sums[i] + samples[i] - smooth[i];
  const marked = new Uint8Array(samples.length);
  for (let i = 0; i < samples.length; i++) {
    const from = Math.max(0, i - half);
    const to = Math.min(samples.length, i + half + 1);
    if (Math.abs(sums[to] - sums[from]) / (to - from) > limit) marked[i] = 1;
  }
  return marked;
}

/** Straight lines over the masked stretches, between the means of a few samples on either side; the rest as it came. */
function bridge(samples: Float64Array, cleaned: Float64Array, mask: Uint8Array, side: number): void {
  cleaned.set(samples);
  const meanOf = (from: number, to: number): number =>
    mean(samples.subarray(Math.max(0, from), Math.min(samples.length, to)));
  for (let i = 0; i < mask.length; i++) {
    if (mask[i] === 0) continue;
    let end = i;
    while (end < mask.length && mask[end] === 1) end++;
    const left = meanOf(i - side, Math.max(1, i));
    const right = meanOf(Math.min(end, samples.length - 1), end + side);
    for (let k = i; k < end; k++) cleaned[k] = left + ((right - left) * (k - i + 0.5)) / (end - i);
    i = end;
  }
}

/** The held part without what lies far from its running median: a start in which large knocks do not spread. */
function withoutGross(
  samples: Float64Array,
  span: { readonly from: number; readonly to: number },
  sampleRateHz: number,
  noise: number,
  rule: MeasureMethod,
): Float64Array {
  const held = samples.slice(span.from, span.to);
  const half = Math.max(1, Math.round(rule.grossWindowS * sampleRateHz * 0.5));
  const middle = runningMedian(held, half);
  const start = samples.slice();
  held.forEach((value, i) => {
    // at the ends the window is cut off, and the force still rises or falls
    if (i < half || i >= held.length - half) return;
    if (Math.abs(value - middle[i]) > noise + rule.grossShare * middle[i]) start[span.from + i] = middle[i];
  });
  return start;
}

/**
 * A held force without knocks: samples that stand out from the low-passed course for a few milliseconds are replaced by it,
 * first the largest, and the course is taken again.
 *
 * @param samples - force above the resting level, regularly sampled, n >= 1 [N or N.m]
 * @param sampleRateHz - samples per second [Hz]
 * @param span - indices between which knocks are looked for: the held part, half-open [index]
 * @param noise - standard deviation of a sample at rest [unit of samples]
 * @param rule - low-pass and size of knocks, see {@link MeasureMethod} [-]
 * @returns cleaned and low-passed signal [unit of samples]
 *
 * Source: ours; filling by repeated filtering: Papoulis (1975), IEEE Trans Circuits Syst 22:735-742
 */
export function cleanLevel(
  samples: Float64Array,
  sampleRateHz: number,
  span: { readonly from: number; readonly to: number },
  noise: number,
  rule: MeasureMethod,
): CleanLevel {
  const cutoffHz = Math.min(rule.peakCutoffHz, 0.4 * sampleRateHz);
  const half = Math.floor((rule.knockS * sampleRateHz) / 2);
  const margin = Math.max(1, Math.round(rule.knockMarginS * sampleRateHz));
  const greatest = samples.subarray(span.from, span.to).reduce((most, value) => Math.max(most, value), 0);
  const limit = Math.max((rule.knockNoise * noise) / Math.sqrt(2 * half + 1), rule.knockShare * greatest);
  const cleaned = samples.slice();
  let smooth = lowPassZeroPhase(
    withoutGross(samples, span, sampleRateHz, rule.knockNoise * noise, rule),
    sampleRateHz,
    cutoffHz,
  );
  const mask = new Uint8Array(samples.length);
  for (let round = 0; round < rule.knockRounds; round++) {
    const marked = knocked(samples, smooth, half, limit * Math.max(1, 2 ** (2 - round)));
    mask.fill(0);
    for (let i = span.from; i < span.to; i++) {
      if (marked[i] === 1) mask.fill(1, Math.max(span.from, i - margin), Math.min(span.to, i + margin + 1));
    }
    bridge(samples, cleaned, mask, margin);
    smooth = lowPassZeroPhase(cleaned, sampleRateHz, cutoffHz);
    for (let pass = 0; pass < rule.knockPasses; pass++) {
      for (let i = span.from; i < span.to; i++) if (mask[i] === 1) cleaned[i] = smooth[i];
      smooth = lowPassZeroPhase(cleaned, sampleRateHz, cutoffHz);
    }
  }
  return { samples: cleaned, smooth, replaced: mask.reduce((sum, one) => sum + one, 0) };
}
