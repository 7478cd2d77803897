/** Samples in equal steps of time. */
export interface Sampled {
  readonly periodMs: number;
  /** values parted by single spaces; E where there is none */
  readonly data: string;
  readonly fromS: number;
  readonly toS: number;
}

/** A sample counts as one of its step when it lies this near to it [steps] */
const NEAR = 0.1;

/** Steps of a recording without samples: more would be a pause and no hole [-] */
const MOST_STEPS_PER_SAMPLE = 4;

/** A decimal without an exponent, nine digits. */
function plainDecimal(value: number): string {
  const cut = Number(value.toPrecision(9));
  const text = String(cut);
  return text.includes('e') ? cut.toFixed(20).replace(/\.?0+$/, '') : text;
}

/**
 * Samples as the standard holds them, which knows equal steps alone. Nothing is interpolated: a step without a sample, or with
 * one that is none, is an error value. Null where the times do not lie in equal steps.
 */
export function sampledOf(timesS: Float64Array, samples: Float64Array): Sampled | null {
  if (timesS.length < 2) return null;
  const steps = Array.from(timesS.subarray(1), (timeS, i) => timeS - timesS[i]!).sort((a, b) => a - b);
  const medianS = steps[Math.floor(steps.length / 2)]!;
  const fromS = timesS[0]!;
  const toS = timesS[timesS.length - 1]!;
  const count = Math.round((toS - fromS) / medianS);
  if (!(count >= 1) || count > MOST_STEPS_PER_SAMPLE * timesS.length) return null;
  const stepS = (toS - fromS) / count;
  const values = new Array<string>(count + 1).fill('E');
  for (let i = 0; i < timesS.length; i += 1) {
    const place = (timesS[i]! - fromS) / stepS;
    const at = Math.round(place);
    if (Math.abs(place - at) > NEAR) return null;
    const sample = samples[i]!;
    if (Number.isFinite(sample)) values[at] = plainDecimal(sample);
  }
  return { periodMs: Number((1000 * stepS).toPrecision(9)), data: values.join(' '), fromS, toS };
}
