/** Sizes of the numbers in a column, from a part of them that is spread evenly over it. */
export interface ColumnSizes {
  /** how many are numbers */
  readonly count: number;
  readonly missing: number;
  readonly median: number;
  /** 0.2nd and 99.8th percentile: single wild values are left out, and a test of half a minute in an hour is not */
  readonly low: number;
  readonly high: number;
  readonly areWhole: boolean;
}

const MOST_LOOKED_AT = 20_000;

/** Every n-th index, so that at most 20,000 are looked at. */
export function strideOf(length: number): number {
  return Math.max(1, Math.ceil(length / MOST_LOOKED_AT));
}

export function columnSizes(samples: Float64Array): ColumnSizes {
  const stride = strideOf(samples.length);
  const looked: number[] = [];
  let missing = 0;
  for (const value of samples) if (Number.isNaN(value)) missing += 1;
  for (let i = 0; i < samples.length; i += stride) if (!Number.isNaN(samples[i]!)) looked.push(samples[i]!);
  looked.sort((a, b) => a - b);
  const at = (share: number): number => looked[Math.min(looked.length - 1, Math.floor(share * looked.length))] ?? 0;
  return {
    count: samples.length - missing,
    missing,
    median: at(0.5),
    low: at(0.002),
    high: at(0.998),
    areWhole: looked.length > 0 && looked.every(Number.isInteger),
  };
}

/** Median and spread of the length of a vector with three axes. */
export interface NormSizes {
  readonly median: number;
  readonly high: number;
  /** from the 10th to the 90th percentile, as a share of the median */
  readonly spread: number;
}

export function normSizes(axes: readonly Float64Array[]): NormSizes {
  const first = axes[0]!;
  const stride = strideOf(first.length);
  const norms: number[] = [];
  for (let i = 0; i < first.length; i += stride) {
    const norm = Math.hypot(...axes.map((axis) => axis[i]!));
    if (!Number.isNaN(norm)) norms.push(norm);
  }
  norms.sort((a, b) => a - b);
  const at = (share: number): number => norms[Math.min(norms.length - 1, Math.floor(share * norms.length))] ?? 0;
  const median = at(0.5);
  return { median, high: at(0.998), spread: median > 0 ? (at(0.9) - at(0.1)) / median : Number.POSITIVE_INFINITY };
}

/** How the numbers of a column follow each other. */
export interface StepSizes {
  readonly median: number;
  /** shares of steps that go on, stand still and go back */
  readonly rising: number;
  readonly still: number;
  readonly back: number;
  /** share of steps within a fifth of the median */
  readonly even: number;
  /** index after the greatest step back; -1 where there is none */
  readonly restart: number;
}

export function stepSizes(samples: Float64Array): StepSizes {
  const looked: number[] = [];
  const stride = strideOf(samples.length);
  let [rising, still, back, count, restart, deepest] = [0, 0, 0, 0, -1, 0];
  for (let i = 1; i < samples.length; i += 1) {
    const step = samples[i]! - samples[i - 1]!;
    if (Number.isNaN(step)) continue;
    count += 1;
    if (step > 0) rising += 1;
    else if (step === 0) still += 1;
    else {
      back += 1;
      if (step < deepest) {
        deepest = step;
        restart = i;
      }
    }
    if (i % stride === 0) looked.push(step);
  }
  looked.sort((a, b) => a - b);
  const median = looked[looked.length >> 1] ?? 0;
  const even = looked.filter((step) => Math.abs(step - median) <= 0.2 * Math.abs(median)).length;
  const share = (n: number): number => (count === 0 ? 0 : n / count);
  return {
    median,
    rising: share(rising),
    still: share(still),
    back: share(back),
    even: looked.length === 0 ? 0 : even / looked.length,
    restart,
  };
}
