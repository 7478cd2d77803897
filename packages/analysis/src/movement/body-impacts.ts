import { lowPassZeroPhase } from '../signal/lowpass.ts';
import { median, quantile } from '../signal/order-statistics.ts';

/** When a sudden change counts as an impact. */
export interface ImpactOptions {
  /** movement of the body lies below this [Hz] */
  readonly impactAboveHz: number;
  /** multiple of the median size of quick change [-] */
  readonly impactThreshold: number;
  /** least size of an impact as a share of the movement below, as large as a quarter of the recording has it [-] */
  readonly impactShare: number;
  /** how far an impact reaches through the low-pass on either side [s] */
  readonly impactReachS: number;
}

/**
 * Marks of brief impacts: heels that hit the floor, knocks.
 *
 * An impact is quick change, above what a body can do by itself, far larger than quick change usually is in this
 * recording. Where impacts fill a third of the surrounding two seconds somebody walks or jumps: nothing is marked there.
 *
 * @param axes - signals on a regular grid before any low-pass [any]
 * @param sampleRateHz - of the grid [Hz]
 * @param options - see {@link ImpactOptions} [Hz, s, -]
 * @returns 1 where an impact disturbs the signal [-]
 *
 * Source: ours
 */
export function impactMarks(axes: readonly Float64Array[], sampleRateHz: number, options: ImpactOptions): Uint8Array {
  const count = axes[0].length;
  const quick = new Float64Array(count);
  const below = new Float64Array(count);
  for (const axis of axes) {
    const slow = lowPassZeroPhase(axis, sampleRateHz, options.impactAboveHz);
    const level = median(slow);
    for (let i = 0; i < count; i++) {
      quick[i] += (axis[i] - slow[i]) ** 2;
      below[i] += (slow[i] - level) ** 2;
    }
  }
  const size = Float64Array.from(quick, (_, i) => {
    const from = Math.max(0, i - 2);
    const to = Math.min(count, i + 3);
    let sum = 0;
    for (let j = from; j < to; j++) sum += quick[j];
    return Math.sqrt(sum / (to - from));
  });
  const limit = Math.max(
    options.impactThreshold * median(size),
    options.impactShare * Math.sqrt(quantile(below, 0.75)),
  );
  const reach = Math.round(options.impactReachS * sampleRateHz);
  const marks = new Uint8Array(count);
  if (!(limit > 0)) return marks;
  for (let i = 0; i < count; i++) {
    if (size[i] > limit) marks.fill(1, Math.max(0, i - reach), Math.min(count, i + reach + 1));
  }
  return withoutDense(marks, Math.round(sampleRateHz));
}

function withoutDense(marks: Uint8Array, half: number): Uint8Array {
  const sums = new Float64Array(marks.length + 1);
  for (let i = 0; i < marks.length; i++) sums[i + 1] = sums[i] + marks[i];
  return marks.map((mark, i) => {
    const from = Math.max(0, i - half);
    const to = Math.min(marks.length, i + half + 1);
    return mark === 1 && sums[to] - sums[from] <= (to - from) / 3 ? 1 : 0;
  });
}
