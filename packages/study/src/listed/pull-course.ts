import type { PullReport, Trace } from '@surae/analysis';

/** Force or torque over a recording in equal steps of time, turned so that pulls go up: what a small picture needs. */
export interface PullCourse {
  readonly fromS: number;
  readonly toS: number;
  /** greatest value of each step; NaN where a step holds no sample */
  readonly most: Float64Array;
}

const STEPS = 240;

/** The course of the channel that a report is of. Knocks of a few milliseconds are taken out by a median of three steps. */
export function pullCourse(trace: Trace, { unit, polarity }: Pick<PullReport, 'unit' | 'polarity'>): PullCourse {
  const quantity = unit === 'N' ? 'force' : 'torque';
  for (const { timesS, channels } of trace.groups) {
    const channel = channels.find((one) => one.quantity === quantity);
    if (channel === undefined) continue;
    const fromS = timesS[0]!;
    const toS = timesS[timesS.length - 1]!;
    const most = new Float64Array(STEPS).fill(Number.NaN);
    timesS.forEach((timeS, i) => {
      const step = Math.min(STEPS - 1, Math.floor(((timeS - fromS) / (toS - fromS)) * STEPS));
      const value = polarity.sign * channel.samples[i]!;
      if (!(most[step]! >= value)) most[step] = value;
    });
    return { fromS, toS, most: most.map((value, k) => middle([most[k - 1] ?? value, value, most[k + 1] ?? value])) };
  }
  return { fromS: 0, toS: 0, most: new Float64Array() };
}

function middle(three: readonly number[]): number {
  const known = three.filter((value) => Number.isFinite(value)).sort((a, b) => a - b);
  return known[Math.floor(known.length / 2)] ?? Number.NaN;
}
