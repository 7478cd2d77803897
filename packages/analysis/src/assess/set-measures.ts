import { BELOW_SHARES, COUNT_SHARES } from '@surae/shared';
import type { Detection } from '../raises/detection.ts';
import { heightFade } from '../raises/fatigue.ts';
import type { Estimate } from '../raises/slope-estimate.ts';
import { setTempo, type TempoParts } from '../raises/tempo.ts';
import { mean } from '../signal/moments.ts';
import { normalQuantile } from '../signal/normal.ts';
import type { AssessedRepetition, SetMeasures, Work } from './report.ts';

type WorkKind = 'heel' | 'ankle' | 'platform' | 'rise' | 'seated';

/** Sum with an uncertainty that adds up in full: lever, scale and floor err alike in every repetition. */
function cautiousSum(values: readonly { readonly value: number | null; readonly u: number | null }[]) {
  let value = 0;
  let u = 0;
  let count = 0;
  for (const one of values) {
    if (one.value === null) continue;
    value += one.value;
    u += one.u ?? 0;
    count += 1;
  }
  return count === 0 ? undefined : { value, u };
}

function totalWork(repetitions: readonly AssessedRepetition[]): Work {
  const sumOf = (kind: WorkKind) =>
    cautiousSum(repetitions.map((one) => ({ value: one.work[`${kind}J`], u: one.work[`${kind}UJ`] })));
  const heel = sumOf('heel');
  const ankle = sumOf('ankle');
  const platform = sumOf('platform');
  const rise = sumOf('rise');
  const seated = sumOf('seated');
  return {
    heelJ: heel?.value ?? null,
    heelUJ: heel?.u ?? null,
    ankleJ: ankle?.value ?? null,
    ankleUJ: ankle?.u ?? null,
    platformJ: platform?.value ?? null,
    platformUJ: platform?.u ?? null,
    riseJ: rise?.value ?? null,
    riseUJ: rise?.u ?? null,
    seatedJ: seated?.value ?? null,
    seatedUJ: seated?.u ?? null,
  };
}

function displacement(repetitions: readonly AssessedRepetition[]): Estimate | null {
  const sum = cautiousSum(
    repetitions.map((one) => ({ value: one.heightM ?? one.riseM, u: one.heightUM ?? one.riseUM })),
  );
  if (sum === undefined) return null;
  const reach = normalQuantile(0.975) * sum.u;
  return { value: sum.value, low: sum.value - reach, high: sum.value + reach };
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : mean(values);
}

function greatest(values: readonly number[]): number | null {
  return values.length === 0 ? null : Math.max(...values);
}

/**
 * Measures of the repetitions that score: those that pass before the end of the test.
 *
 * @param repetitions - all attempted ones, in order [m, J]
 * @param endAt - last repetition of the test, from 1; 0 for none [-]
 * @returns time from the first start to the end of the test, displacement and work [s, m, J]
 *
 * Source: definition
 */
export function scoredMeasures(
  repetitions: readonly AssessedRepetition[],
  endAt: number,
): Pick<SetMeasures, 'timeToEndS' | 'scoredDisplacementM' | 'scoredWork'> {
  const scored = repetitions.filter((one) => one.passes && !one.afterEnd);
  const [fromS, toS] = endAt > 0 ? [repetitions[0].startS, repetitions[endAt - 1].endS] : [null, null];
  return {
    timeToEndS: fromS === null || toS === null ? null : toS - fromS,
    scoredDisplacementM: displacement(scored),
    scoredWork: totalWork(scored),
  };
}

/** What the measures of a set are taken from. */
export interface MeasureInputs {
  readonly detection: Detection;
  readonly repetitions: readonly AssessedRepetition[];
  readonly tempo: readonly TempoParts[];
  /** the reference on the scale of the trace, which has no metres when the lever is unknown */
  readonly referenceOnTraceM: number | undefined;
  readonly heightsKnown: boolean;
  readonly cycleTargetS: number | undefined;
  /** last repetition of the test, from 1 */
  readonly endAt: number;
}

/**
 * Measures of a whole set: heights, displacement and work over all attempted repetitions and over those that score,
 * power, time under tension, tempo and fade.
 *
 * @param inputs - see {@link MeasureInputs} [-]
 * @returns the measures, null where they cannot be taken [m, J, W, s]
 *
 * Source: definition
 */
export function setMeasures(inputs: MeasureInputs): SetMeasures {
  const { detection, repetitions, tempo } = inputs;
  const { raises } = detection;
  // proportions are known even where metres are not
  const relative = raises.map((raise) => (raise.topInGap ? undefined : raise.heightM));
  const fade = heightFade(relative, inputs.referenceOnTraceM, BELOW_SHARES);
  const heights = repetitions.flatMap((one) => one.heightM ?? one.riseM ?? []);
  const { timeToEndS, scoredDisplacementM, scoredWork } = scoredMeasures(repetitions, inputs.endAt);
  const known = relative.filter((value) => value !== undefined);
  const highest = greatest(known);
  return {
    heightsMeasured: heights.length,
    timeToEndS,
    peakHeightM: greatest(heights),
    meanHeightM: meanOf(heights),
    firstThreeHeightM: heights.length < 3 ? null : mean(heights.slice(0, 3)),
    lastThreeHeightM: heights.length < 3 ? null : mean(heights.slice(-3)),
    displacementM: displacement(repetitions),
    scoredDisplacementM,
    work: totalWork(repetitions),
    scoredWork,
    meanPowerW: meanOf(repetitions.flatMap((one) => one.meanPowerW ?? [])),
    peakPowerW: greatest(repetitions.flatMap((one) => one.peakPowerW ?? [])),
    timeUnderTensionS: raises.reduce((sum, raise) => sum + (raise.endS - raise.startS), 0),
    tempo: setTempo(tempo, inputs.cycleTargetS),
    fatigue: inputs.heightsKnown ? fade : { ...fade, slopeM: null },
    countAtFraction: COUNT_SHARES.map((fraction) => ({
      fraction,
      // a share that is equal in arithmetic may miss by the last bit
      count: highest === null ? 0 : known.filter((value) => value >= fraction * highest * (1 - 1e-12)).length,
    })),
  };
}
