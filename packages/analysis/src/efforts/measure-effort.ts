import { findGaps, longestGapS } from '../signal/gaps.ts';
import type { Interval } from '../signal/intervals.ts';
import { lowPassZeroPhase } from '../signal/lowpass.ts';
import { medianAbsoluteDeviation } from '../signal/order-statistics.ts';
import { judgeEffort } from './acceptance.ts';
import { cleanLevel } from './clean-level.ts';
import { isClipped } from './clipping.ts';
import { distinctStart } from './distinct-start.ts';
import { earlyRise } from './early-rise.ts';
import type { EffortSettings } from './effort-settings.ts';
import type { Figure } from './figure.ts';
import type { GrossAndNet, IsometricEffort } from './isometric-effort.ts';
import { crossing, riseOnset, type SmoothPull, straightToZero } from './onset.ts';
import { plateauAround, unsteadiness } from './plateau.ts';
import { beforeOnset } from './pre-tension.ts';
import type { PullUnit } from './pull-signal.ts';
import { evenNear } from './regular-beat.ts';
import { firstFrom, type RestLine, type Samples } from './rest-level.ts';
import { type NoRateReason, riseRates } from './rise-rates.ts';
import { bestRollingMean } from './rolling-mean.ts';
import { stampJitterS } from './stamp-jitter.ts';

/** One effort as it lies in a recording. */
export interface EffortInTrace {
  readonly unit: PullUnit;
  readonly sampleRateHz: number;
  /** unfiltered samples, pulls upwards [s, unit] */
  readonly signal: Samples;
  /** a stretch that holds the effort and rest on both sides, on a regular grid, pulls upwards */
  readonly grid: { readonly startS: number; readonly values: Float64Array };
  /** times at which half of the effort is crossed [s] */
  readonly half: Interval;
  /** stretches of rest beside it [s] */
  readonly rest: RestLine;
  readonly restSpans: readonly Interval[];
  readonly gaps: readonly Interval[];
  readonly sensorLimit: number | null;
  readonly lifted: boolean | null;
  /** how the effort was to be made; null judges it by how it was made */
  readonly asked: 'ramp' | 'fast' | null;
}

/** Least difference between two readings that follow each other and differ: the step of the converter, or less. */
function readingStep(samples: Float64Array): number {
  let step = Infinity;
  for (let i = 1; i < samples.length; i++) {
    const difference = Math.abs(samples[i] - samples[i - 1]);
    if (difference > 1e-9 && difference < step) step = difference;
  }
  return Number.isFinite(step) ? step : 0;
}

/** Noise of one sample, and of the low-passed signal, in the rest beside an effort. */
function restNoise(effort: EffortInTrace, net: Float64Array, smooth: Float64Array): { sample: number; smooth: number } {
  const { startS } = effort.grid;
  const pick = (values: Float64Array): number[] =>
    effort.restSpans.flatMap(({ fromS, toS }) => {
      const from = Math.max(0, Math.ceil((fromS - startS) * effort.sampleRateHz));
      const to = Math.min(values.length, Math.floor((toS - startS) * effort.sampleRateHz));
      return to - from < 8 ? [] : [...values.subarray(from, to)];
    });
  const quick = pick(net.map((value, i) => value - smooth[i]));
  if (quick.length === 0) return { sample: 1e-6, smooth: 1e-6 };
  // the rest of slow creep does not count as noise of the sensor
  const sampleSds = [effort.rest.before, effort.rest.after].flatMap((level) =>
    level === null ? [] : [level.sampleSd],
  );
  const floor = Math.max(1e-6, readingStep(effort.signal.samples) / 2);
  const sample = Math.max(floor, ...(sampleSds.length === 0 ? [0] : [Math.min(...sampleSds)]));
  return { sample, smooth: Math.max(1e-6, Math.min(sample, medianAbsoluteDeviation(pick(smooth)))) };
}

function grossAndNet(net: number, u: number, rest: number): GrossAndNet {
  return { net: { value: net, u }, gross: { value: net + rest, u } };
}

function impulseOf(net: Samples, fromS: number, toS: number): number {
  let sum = 0;
  for (let i = firstFrom(net.timesS, fromS) + 1; i < net.timesS.length && net.timesS[i] <= toS; i++) {
    sum += ((net.samples[i] + net.samples[i - 1]) / 2) * (net.timesS[i] - net.timesS[i - 1]);
  }
  return sum;
}

/**
 * Every figure of one effort.
 *
 * @param effort - the effort in its recording, see {@link EffortInTrace} [s, N or N.m]
 * @param settings - see {@link EffortSettings} [-]
 * @returns the effort; null when the recording does not hold its beginning and end [s, N or N.m]
 *
 * Source: ours; the parts name theirs
 */
export function measureEffort(effort: EffortInTrace, settings: EffortSettings): IsometricEffort | null {
  const { signal, rest, sampleRateHz, half, grid } = effort;
  const { measure, onset: onsetRule, accept } = settings;
  const netGrid = grid.values.map((value, i) => value - rest.at(grid.startS + i / sampleRateHz));
  const netSamples = signal.samples.map((value, i) => value - rest.at(signal.timesS[i]));
  const net = { timesS: signal.timesS, samples: netSamples };
  const cutoffHz = Math.min(onsetRule.cutoffHz, 0.4 * sampleRateHz);
  const raw: SmoothPull = {
    startS: grid.startS,
    sampleRateHz,
    values: lowPassZeroPhase(netGrid, sampleRateHz, cutoffHz),
  };
  const indexAt = (timeS: number): number =>
    Math.max(0, Math.min(netGrid.length - 1, Math.round((timeS - grid.startS) * sampleRateHz)));
  const timeAt = (index: number): number => grid.startS + index / sampleRateHz;
  const noise = restNoise(effort, netGrid, raw.values);

  const [halfFrom, halfTo] = [indexAt(half.fromS), indexAt(half.toS)];
  let roughTop = halfFrom;
  for (let i = halfFrom; i <= halfTo; i++) if (raw.values[i] > raw.values[roughTop]) roughTop = i;
  const rough = raw.values[roughTop];
  const heldFrom = crossingAhead(raw, halfFrom, measure.heldShare * rough, roughTop);
  const clean = cleanLevel(netGrid, sampleRateHz, { from: heldFrom, to: halfTo }, noise.sample, measure);
  let top = heldFrom;
  for (let i = heldFrom; i <= halfTo; i++) if (clean.smooth[i] > clean.smooth[top]) top = i;
  const peak = clean.smooth[top] - measure.peakNoiseBias * noise.smooth;

  const middle = Math.max(halfFrom, Math.min(top, halfFrom + 1));
  const climb = firstAbove(raw, middle, onsetRule.highShare * peak);
  const line = straightToZero(raw, climb, peak, onsetRule, -1);
  const descent = straightToZero(raw, halfTo - 1, peak, onsetRule, 1);
  if (line === null || descent === null) return null;
  const lateS = timeAt(crossingAhead(raw, climb, measure.riseHighShare * peak, top));
  const earlyS = crossing(raw, climb, measure.riseLowShare * peak, -1) ?? line.highS;
  const kind = lateS - earlyS <= measure.fastRiseS ? 'fast' : 'ramp';

  const beforeLine = beforeOnset(raw, line.zeroS, noise.smooth, accept);
  const disturbed =
    beforeLine !== null &&
    beforeLine.dip.value > Math.max(onsetRule.disturbedNoise * noise.smooth, onsetRule.disturbedLeast * peak);
  const stampS = stampJitterS(signal.timesS);
  const toS = timeAt(crossingAhead(raw, indexAt(line.highS), onsetRule[kind].fitShare * peak, top));
  const above = Math.min(onsetRule.lowShare * peak, Math.max(onsetRule.disturbedShare * peak, beforeLine?.most ?? 0));
  const undisturbedS = line.zeroS - Math.max(onsetRule.fitBeforeS, toS - line.zeroS);
  const fromS = disturbed ? (crossing(raw, climb, above, -1) ?? line.lowS) : undisturbedS;
  const even =
    (stampS * peak) / (toS - line.zeroS) > noise.sample ? evenNear(signal.timesS, { fromS, toS }, sampleRateHz) : null;
  // with both accounts of the times of the samples, little of their unevenness is left to explain
  const riseNoise = { sample: noise.sample, stampS: even === null ? stampS : onsetRule.stampShare * stampS };
  const fitted = riseOnset(net, even, line, { fromS, toS }, { kind, peak, noise: riseNoise }, onsetRule);
  const preparation = beforeOnset(raw, Math.min(line.zeroS, fitted.timeS.value), noise.smooth, accept);
  const gaps = findGapsIn(effort.gaps, signal, accept.gapS);
  // what is missing in the rise may hold its beginning
  const riseGapS = longestGapS(gaps, Math.min(line.zeroS, fitted.timeS.value) - accept.gapS, lateS);
  const onset = { ...fitted, timeS: { value: fitted.timeS.value, u: Math.hypot(fitted.timeS.u, riseGapS) } };

  const endS: Figure = { value: descent.zeroS, u: onsetRule.lineU * Math.abs(descent.zeroS - descent.lowS) };
  const plateau = plateauAround(clean.smooth, top, measure.plateauShare);
  const window = Math.max(1, Math.round(measure.meanWindowS * sampleRateHz));
  const best = bestRollingMean(clean.samples, indexAt(onset.timeS.value), indexAt(endS.value), window);
  const restU = rest.u(timeAt(top));
  const peakU = measure.peakU * Math.hypot(noise.smooth, restU, measure.peakRelativeU * peak);
  const meanRelativeU = Math.hypot(measure.meanRelativeU, measure.meanSampleU / window);
  const meanU = measure.meanU * Math.hypot(noise.sample / Math.sqrt(window), restU, meanRelativeU * peak);
  const plateauS: Figure = {
    value: (plateau.to - plateau.from) / sampleRateHz,
    u: Math.hypot(1 / sampleRateHz, measure.timeUS),
  };
  const [from, to] = [firstFrom(signal.timesS, half.fromS), firstFrom(signal.timesS, half.toS)];
  const clipped = isClipped(signal.samples.subarray(from, to), sampleRateHz, effort.sensorLimit, accept);
  const gapS = Math.max(
    longestGapS(gaps, timeAt(plateau.from), timeAt(plateau.to)),
    longestGapS(gaps, timeAt(top) - accept.gapNearS, timeAt(top) + accept.gapNearS),
  );
  const { before, after } = rest;
  const acceptance = judgeEffort(
    {
      unit: effort.unit,
      kind: effort.asked ?? kind,
      made: kind,
      peak,
      restSd: before === null ? null : before.blockSd,
      restChange:
        before === null || after === null
          ? null
          : { value: Math.abs(after.level - before.level), u: Math.hypot(before.u, after.u) },
      dip: preparation === null ? null : preparation.dip,
      creep: preparation === null ? null : preparation.creep,
      gapS,
      clipped,
      plateauS,
      lifted: effort.lifted,
    },
    accept,
  );
  const seen = riseGapS === 0 && !clipped && preparation !== null;
  const refused = refusal();
  const rates = riseRates(net, onset, rest, { sample: noise.sample, stampS }, sampleRateHz, refused, measure);
  const timeToPeakS = { value: timeAt(top) - onset.timeS.value, u: Math.hypot(onset.timeS.u, measure.timeUS) };
  const lengthS = endS.value - onset.timeS.value;
  return {
    unit: effort.unit,
    kind,
    onsetS: onset.timeS,
    onsetMethod: onset.method,
    start: kind === 'ramp' ? null : distinctStart(onset, seen, sampleRateHz, measure),
    endS,
    rest: { value: rest.at(timeAt(top)), u: restU },
    peak: grossAndNet(peak, peakU, rest.at(timeAt(top))),
    peakS: timeAt(top),
    bestMean: best === null ? null : grossAndNet(best.value, meanU, rest.at(timeAt(best.fromIndex + window / 2))),
    bestMeanFromS: best === null ? null : timeAt(best.fromIndex),
    plateauS,
    unsteadiness: unsteadiness(clean.smooth, plateau, sampleRateHz, noise.smooth),
    timeToPeakS,
    impulse: {
      value: impulseOf(net, onset.timeS.value, endS.value),
      u: Math.hypot(restU * lengthS, noise.sample * Math.sqrt(lengthS / sampleRateHz)),
    },
    rates,
    early: earlyRise(net, onset, rest, riseNoise, { value: peak, u: peakU }, rates, measure),
    acceptance,
  };

  function refusal(): NoRateReason | null {
    if (riseGapS > 0) return 'gap-in-rise';
    if (kind === 'ramp') return 'ramped';
    if (clipped) return 'clipped';
    const riseEndS = onset.timeS.value + Math.max(...measure.rateWindowsS);
    if (longestGapS(gaps, line!.zeroS - accept.gapS, riseEndS) > 0) return 'gap-in-rise';
    if (preparation === null) return 'onset-uncertain';
    const inNewton = effort.unit === 'N';
    const dipMost = inNewton ? accept.riseDipN : accept.riseDipNm;
    if (preparation.dip.value > dipMost + 1.96 * preparation.dip.u) return 'countermovement';
    const creepMost = inNewton ? accept.creepNps : accept.creepNmps;
    if (preparation.creep.value > creepMost + 1.96 * preparation.creep.u) return 'pre-tension';
    return null;
  }
}

function findGapsIn(gaps: readonly Interval[], signal: Samples, leastS: number): readonly Interval[] {
  return gaps.length > 0 ? gaps : findGaps(signal.timesS, leastS);
}

/** First index from `from` on at which the force has reached a level, `last` at the latest. */
function crossingAhead(pull: SmoothPull, from: number, level: number, last: number): number {
  let i = from;
  while (i < last && pull.values[i] < level) i++;
  return i;
}

/** First index from `from` on at or above a level; knocks may lie below it at `from`. */
function firstAbove(pull: SmoothPull, from: number, level: number): number {
  let i = from;
  while (i < pull.values.length - 1 && pull.values[i] < level) i++;
  return i;
}
