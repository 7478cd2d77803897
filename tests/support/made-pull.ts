import type { Trace } from '@surae/analysis';

/** One made effort: a smooth rise, a hold and a smooth release, in N above the resting level. */
export interface MadeEffort {
  readonly onsetS: number;
  readonly force: (afterS: number) => number;
}

function fade(share: number): number {
  const s = Math.min(1, Math.max(0, share));
  return 1 - s * s * (3 - 2 * s);
}

/** An effort that rises as height (1 - exp(-t / riseS)), is held for a time and let go within 0.3 s. */
export function exponentialEffort(onsetS: number, height: number, riseS: number, heldS: number): MadeEffort {
  return {
    onsetS,
    force: (t) => (t <= 0 ? 0 : height * (1 - Math.exp(-t / riseS)) * fade((t - heldS) / 0.3)),
  };
}

/** An effort that is ramped up within a time, held and let go within 0.4 s. */
export function rampEffort(onsetS: number, height: number, riseS: number, heldS: number): MadeEffort {
  return {
    onsetS,
    force: (t) => (t <= 0 ? 0 : height * (1 - fade(t / riseS)) * fade((t - riseS - heldS) / 0.4)),
  };
}

/** Even noise of a standard deviation, from a small generator of its own (Park and Miller 1988). */
export function madeNoise(seed: number, sd: number): () => number {
  let state = seed;
  return () => {
    let sum = 0;
    for (let i = 0; i < 12; i++) {
      state = (state * 48_271) % 2_147_483_647;
      sum += state / 2_147_483_647;
    }
    return sd * (sum - 6);
  };
}

export interface MadePull {
  readonly efforts: readonly MadeEffort[];
  readonly lengthS: number;
  readonly sampleRateHz: number;
  readonly noise?: number;
  /** resting load at a time [N] */
  readonly rest?: (timeS: number) => number;
  readonly quantity?: 'force' | 'torque';
}

/** Samples of a made recording. */
export function madeSamples(pull: MadePull): { timesS: Float64Array; samples: Float64Array } {
  const noise = madeNoise(17, pull.noise ?? 0);
  const rest = pull.rest ?? (() => 0);
  const timesS = Float64Array.from(
    { length: Math.round(pull.lengthS * pull.sampleRateHz) },
    (_, i) => i / pull.sampleRateHz,
  );
  const samples = timesS.map(
    (timeS) => rest(timeS) + noise() + pull.efforts.reduce((sum, { onsetS, force }) => sum + force(timeS - onsetS), 0),
  );
  return { timesS, samples };
}

/** The same as a trace with one channel. */
export function madeTrace(pull: MadePull): Trace {
  const { timesS, samples } = madeSamples(pull);
  return traceOf(timesS, samples, pull.quantity);
}

export function traceOf(timesS: Float64Array, samples: Float64Array, quantity: 'force' | 'torque' = 'force'): Trace {
  return { groups: [{ timesS, channels: [{ quantity, axis: null, samples }] }] };
}
