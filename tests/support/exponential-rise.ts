import { restLine } from '../../packages/analysis/src/efforts/rest-level.ts';
import { forceOnCurve } from '../../packages/analysis/src/efforts/rise-curve.ts';

/** An exponential rise to 1000 N from 1 s on, time constant 0.1 s. */
export const exponentialCurve = {
  startS: 1,
  takeUpS: 0,
  takeUpShare: 0,
  takeUpPower: 1,
  riseS: 0.1,
  power: 1,
  settling: 0,
  height: 1000,
};

/** Its onset, known to a millisecond. */
export const exponentialOnset = { timeS: { value: 1, u: 0.001 }, method: 'curve', curve: exponentialCurve } as const;

/** A resting level of nothing, and the noise of a sample. */
export const restOfNothing = restLine({ level: 0, u: 0.1, blockSd: 0.1, sampleSd: 1, centreS: 0 }, null, 0)!;
export const newtonOfNoise = { sample: 1, stampS: 0 };

/** Two seconds of it at 1000 Hz, without noise. */
const timesS = Float64Array.from({ length: 2000 }, (_, i) => i / 1000);
export const exponentialSamples = { timesS, samples: timesS.map((timeS) => forceOnCurve(exponentialCurve, timeS)) };
