import type { AssessmentRequest, Detection, Motion, Raise } from '@surae/analysis';
import { defaultSettings, judge } from '@surae/analysis';
import { FLOOR } from '@surae/shared';

const SAMPLE_RATE_HZ = 100;

/** What a made-up set is described by; every repetition rises and falls like (1 - cos) within its period. */
export interface SetDescription {
  readonly heightsM: readonly number[];
  readonly uM?: number;
  readonly kind?: Motion['kind'];
  readonly periodS?: number;
  /** extra time at the bottom after a repetition, by its index from 0 */
  readonly rests?: Readonly<Record<number, number>>;
  readonly timeUS?: number;
  /** changes to single repetitions, by their index from 0 */
  readonly raises?: Readonly<Record<number, Partial<Raise>>>;
  readonly detection?: Partial<Detection>;
  readonly motion?: Partial<Motion>;
}

/** A detected set as its description says, with the movement on a grid of 100 Hz. */
export function detectedSet(description: SetDescription): Detection {
  const { heightsM, uM = 0.002, kind = 'heel-height', periodS = 2, rests = {}, timeUS = 0.01 } = description;
  const starts: number[] = [];
  let atS = 2;
  heightsM.forEach((_, i) => {
    starts.push(atS);
    atS += periodS + (rests[i] ?? 0);
  });
  const count = Math.round((atS + 2) * SAMPLE_RATE_HZ);
  const heightM = new Float64Array(count);
  heightsM.forEach((height, i) => {
    const from = Math.round(starts[i] * SAMPLE_RATE_HZ);
    const steps = Math.round(periodS * SAMPLE_RATE_HZ);
    for (let k = 0; k <= steps; k++) heightM[from + k] = (height / 2) * (1 - Math.cos((2 * Math.PI * k) / steps));
  });
  const raises: Raise[] = heightsM.map((height, i) => ({
    startS: starts[i],
    startUS: timeUS,
    topS: starts[i] + periodS / 2,
    topUS: timeUS,
    endS: starts[i] + periodS,
    endUS: timeUS,
    highFromS: starts[i] + 0.45 * periodS,
    highToS: starts[i] + 0.55 * periodS,
    heightM: height,
    heightUM: uM,
    lowBeforeM: 0,
    lowAfterM: 0,
    probability: 1,
    longestGapS: 0,
    topInGap: false,
    ...description.raises?.[i],
  }));
  return {
    raises,
    doubtful: [],
    countLow: heightsM.length,
    countHigh: heightsM.length,
    motion: { kind, startS: 0, sampleRateHz: SAMPLE_RATE_HZ, heightM, gaps: [], ...description.motion },
    stance: { fromS: 0, toS: 2 },
    stillSdM: 0.001,
    issues: [],
    ...description.detection,
  };
}

/** Level floor, left heel, nothing known about the person. */
export const PLAIN_REQUEST: AssessmentRequest = { placement: 'heel', side: 'left', protocol: FLOOR, subject: {} };

/** Report on a made-up set under the usual settings. */
export function judged(description: SetDescription, request: Partial<AssessmentRequest> = {}) {
  return judge(detectedSet(description), { ...PLAIN_REQUEST, ...request }, defaultSettings().judging);
}
