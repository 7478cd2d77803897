import { findGaps } from '../signal/gaps.ts';
import { gridOver, resample } from '../signal/grid.ts';
import type { Interval } from '../signal/intervals.ts';
import type { Trace } from '../trace.ts';
import { coarseLevel, rollingLevel } from './coarse-level.ts';
import type { EffortSettings } from './effort-settings.ts';
import { findPulls, type PullSpan } from './find-pulls.ts';
import type { IsometricEffort } from './isometric-effort.ts';
import { measureEffort } from './measure-effort.ts';
import { findPolarity, type Polarity } from './polarity.ts';
import { type PullSignal, type PullUnit, pullSignal } from './pull-signal.ts';
import { firstFrom, restLevel, restLine, type Samples } from './rest-level.ts';
import { judgeWarmUps } from './warm-up.ts';

/** What is known of a recording of pulls besides its samples. */
export interface EffortRequest {
  /** which way the reading goes when somebody pulls; `find` takes it from the signal */
  readonly polarity: 'positive' | 'negative' | 'find';
  /** end of the range of the sensor, each way; left out when not known [N or N.m] */
  readonly sensorLimit?: number;
  /** times at which the tester saw heel or hip lift; left out when nobody looked [s] */
  readonly liftedAtS?: readonly number[];
  /** how the efforts were to be made; left out, each is judged by how it was made */
  readonly asked?: 'ramp' | 'fast';
  /** how many of the first pushes were warm-ups; left out, those far below the best before the first full one are */
  readonly warmUpPushes?: number;
}

/** Something that looked like an effort and is none. */
export interface NoEffort {
  readonly fromS: number;
  readonly toS: number;
  readonly reason: 'knock' | 'cut-off' | 'too-small' | 'not-measurable';
}

/** The efforts of a recording. */
export interface FoundEfforts {
  readonly unit: PullUnit;
  readonly sampleRateHz: number;
  readonly polarity: Polarity;
  /** in time order */
  readonly efforts: readonly IsometricEffort[];
  readonly others: readonly NoEffort[];
}

/** Times of a pull: half of it, and its foot on both sides, where rest ends and begins again [s]. */
interface PullTimes {
  readonly half: Interval;
  readonly foot: Interval;
}

/** Where the foot of a pull lies: the way from half down to 5 % of it, and a share of that way more. */
function timesOf(
  span: PullSpan,
  rise: Float64Array,
  timeAt: (i: number) => number,
  settings: EffortSettings,
): PullTimes {
  const low = settings.onset.lowShare * rise[span.topIndex];
  const { footShare, marginS } = settings.rest;
  let from = span.fromIndex;
  while (from > span.valleyBefore && rise[from] > low + Math.max(0, rise[span.valleyBefore])) from--;
  let to = span.toIndex;
  while (to < span.valleyAfter && rise[to] > low + Math.max(0, rise[span.valleyAfter])) to++;
  const half = { fromS: timeAt(span.fromIndex), toS: timeAt(span.toIndex) };
  const foot = {
    fromS: timeAt(from) - footShare * (half.fromS - timeAt(from)) - marginS,
    toS: timeAt(to) + footShare * (timeAt(to) - half.toS) + marginS,
  };
  return { half, foot };
}

function measureOne(
  signal: PullSignal,
  pulls: readonly PullTimes[],
  k: number,
  request: EffortRequest,
  settings: EffortSettings,
): IsometricEffort | null {
  const { timesS } = signal;
  const { half, foot } = pulls[k];
  const { windowS, lineShare } = settings.rest;
  const endS = timesS[timesS.length - 1];
  const beforeSpan = {
    fromS: Math.max(timesS[0], foot.fromS - windowS, pulls[k - 1]?.foot.toS ?? -Infinity),
    toS: foot.fromS,
  };
  const afterSpan = { fromS: foot.toS, toS: Math.min(endS, foot.toS + windowS, pulls[k + 1]?.foot.fromS ?? Infinity) };
  const before = restLevel(signal, beforeSpan.fromS, beforeSpan.toS, settings.rest);
  const after = restLevel(signal, afterSpan.fromS, afterSpan.toS, settings.rest);
  const rest = restLine(before, after, lineShare);
  if (rest === null) return null;
  const fromS = Math.min(beforeSpan.fromS, foot.fromS);
  const from = firstFrom(timesS, fromS);
  const to = firstFrom(timesS, Math.max(afterSpan.toS, foot.toS));
  const part: Samples = { timesS: timesS.subarray(from, to), samples: signal.samples.subarray(from, to) };
  const grid = gridOver(part.timesS, signal.sampleRateHz);
  const lifted = request.liftedAtS?.some((timeS) => timeS >= foot.fromS && timeS <= foot.toS) ?? null;
  return measureEffort(
    {
      unit: signal.unit,
      sampleRateHz: signal.sampleRateHz,
      signal: part,
      grid: { startS: grid.startS, values: resample(part.timesS, part.samples, grid) },
      half,
      rest,
      restSpans: [beforeSpan, afterSpan].filter((span) => span.toS > span.fromS),
      gaps: findGaps(part.timesS, settings.accept.gapS),
      sensorLimit: request.sensorLimit ?? null,
      lifted,
      asked: request.asked ?? null,
    },
    settings,
  );
}

/**
 * The isometric efforts of a recording: any number of them, none included.
 *
 * @param trace - a recording with a force or torque channel [N or N.m]
 * @param request - what is known besides [-]
 * @param settings - see {@link EffortSettings} [-]
 * @returns the efforts with their figures, and what looked like one [s, N or N.m]
 * @throws {@link InputError} `missing-channel`, `too-short`, `length-mismatch`, `not-finite`, `not-increasing` for the trace; `out-of-range` for a number of warm-up pushes
 *
 * Source: ours
 */
export function findEfforts(trace: Trace, request: EffortRequest, settings: EffortSettings): FoundEfforts {
  const raw = pullSignal(trace);
  const { pull } = settings;
  const coarse = coarseLevel(raw, pull.blockS, pull.medianS);
  const found = findPolarity(coarse.values, coarse.intervalS, pull);
  const polarity: Polarity =
    request.polarity === 'find' ? found : { sign: request.polarity === 'positive' ? 1 : -1, clear: true };
  const { sign } = polarity;
  const signal: PullSignal = { ...raw, samples: sign === 1 ? raw.samples : raw.samples.map((value) => -value) };
  const upward = sign === 1 ? coarse.values : coarse.values.map((value) => -value);
  const level = rollingLevel(upward, Math.round(pull.restWindowS / coarse.intervalS), pull.restShare);
  const rise = upward.map((value, i) => value - level[i]);
  const timeAt = (i: number): number => coarse.startS + i * coarse.intervalS;
  const least = raw.unit === 'N' ? pull.leastN : pull.leastNm;
  const spans = findPulls(rise, coarse.intervalS, least, pull);
  const pulls = spans.map((span) => timesOf(span, rise, timeAt, settings));
  const efforts: IsometricEffort[] = [];
  const others: NoEffort[] = [];
  spans.forEach(({ rejected }, k) => {
    const effort = rejected === null ? measureOne(signal, pulls, k, request, settings) : null;
    if (effort !== null) efforts.push(effort);
    else others.push({ ...pulls[k].half, reason: rejected ?? 'not-measurable' });
  });
  // a knock is no push; whatever else was not measured is one
  const otherS = others.flatMap(({ reason, fromS }) => (reason === 'knock' ? [] : [fromS]));
  const warmUp = { told: request.warmUpPushes ?? null, share: settings.trials.fullShare };
  return {
    unit: raw.unit,
    sampleRateHz: raw.sampleRateHz,
    polarity,
    efforts: judgeWarmUps(efforts, otherS, warmUp),
    others,
  };
}
