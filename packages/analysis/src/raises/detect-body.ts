import type { Issue } from '../issue.ts';
import { type BodyAcceleration, bodyAcceleration } from '../movement/body-acceleration.ts';
import { bodyChannels } from '../movement/body-channels.ts';
import { slowDrift } from '../movement/body-drift.ts';
import { type BodyWeight, bodyWeight } from '../movement/body-weight.ts';
import { contains, durationS, type Interval, mergeIntervals } from '../signal/intervals.ts';
import { median } from '../signal/order-statistics.ts';
import type { Trace } from '../trace.ts';
import { type Agreed, type AgreedSet, agreedRepetitions } from './body/consensus.ts';
import { hiddenRepetitions } from './body/hidden.ts';
import { boutSpans, impossibleBouts } from './body/impossible-bouts.ts';
import { jointTiming } from './body/joint-timing.ts';
import { fitAcrossKnocks } from './body/knocks.ts';
import { bodyMotion } from './body/motion.ts';
import { type RaiseList, raiseList } from './body/raise-list.ts';
import { riseEstimates } from './body/rise-estimates.ts';
import type { ModelSignal } from './body/round.ts';
import type { FittedSet } from './body/set-model.ts';
import { searchSet } from './body/set-search.ts';
import type { BodySettings } from './body/settings.ts';
import type { Detection, Raise } from './detection.ts';

/** The model's input: acceleration within the stance, on the coarser grid, without slow drift. */
function modelSignal(body: BodyAcceleration, span: Interval, settings: BodySettings): ModelSignal {
  const step = Math.round(body.sampleRateHz / settings.modelRateHz);
  const first = Math.max(0, Math.ceil(((span.fromS - body.startS) * body.sampleRateHz) / step) * step);
  const last = Math.min(body.upward.length, Math.floor((span.toS - body.startS) * body.sampleRateHz));
  const cells = Math.max(0, Math.ceil((last - first) / step));
  const coarse = Float64Array.from({ length: cells }, (_, i) => body.upward[first + i * step]);
  const timeOf = (cell: number): number => body.startS + (first + cell * step) / body.sampleRateHz;
  const isHit = (i: number): boolean => body.impacts[first + i * step] === 1;
  const recorded = Uint8Array.from({ length: cells }, (_, i) =>
    body.gaps.some((gap) => contains(gap, timeOf(i))) ? 0 : 1,
  );
  const present = recorded.map((is, i) => (isHit(i) ? 0 : is));
  const drift = slowDrift(coarse, settings.modelRateHz, settings.driftWindowS);
  const acceleration = coarse.map((value, i) => (value - drift[i]) * present[i]);
  const disturbed = coarse.map((value, i) => (isHit(i) && recorded[i] === 1 ? value - drift[i] : Number.NaN));
  // a cell is centred on its sample, so its first boundary lies half a cell earlier
  const impacts = Float64Array.from({ length: cells }, (_, i) => {
    const at = first + i * step;
    return body.impacts[at] === 1 && body.impacts[Math.max(0, at - step)] === 0 ? 1 : 0;
  });
  const logPower =
    body.sideways && Float64Array.from({ length: cells }, (_, i) => Math.log(body.sideways![first + i * step] + 1e-9));
  const barred = Uint8Array.from({ length: cells }, (_, i) => body.travelling?.[first + i * step] ?? 0);
  return {
    acceleration,
    present,
    impacts,
    disturbed,
    barred,
    ...(logPower && { logPower }),
    startS: timeOf(0) - 0.5 / settings.modelRateHz,
  };
}

/** Spans that most paths hold to be other movement. */
function otherSpans(fitted: FittedSet, cells: number, timeOf: (cell: number) => number): Interval[] {
  const share = new Float64Array(cells + 1);
  for (const path of fitted.paths) for (const [from, to] of path.other) for (let i = from; i < to; i++) share[i]++;
  const spans: Interval[] = [];
  for (let i = 0; i < cells; i++) {
    if (share[i] < fitted.paths.length / 2) continue;
    let to = i;
    while (to < cells && share[to] >= fitted.paths.length / 2) to++;
    spans.push({ fromS: timeOf(i), toS: timeOf(to) });
    i = to;
  }
  return spans;
}

/**
 * Heel raises in a recording of a trunk accelerometer or a force platform: the final pass.
 *
 * The signal is small beside sway, so the recording is explained as a whole: standing, repetitions in a rhythm that is
 * learnt from them, other movement. Probabilities and the bounds of the count come from segmentations drawn from their
 * posterior. Rises are drawn towards the line of the set, the more the noisier the recording.
 *
 * @param trace - the recording [m/s2, N]
 * @param placement - accelerometer at the trunk, or platform under the whole foot [-]
 * @param subject - body mass from a scale, when known [kg]
 * @param settings - priors and sizes, see {@link BodySettings} [-]
 * @returns attempted repetitions, doubtful movements, bounds of the count, rise of the body [s, m]
 * @throws {@link InputError} `missing-channel` when the trace holds no acceleration or force; `too-short` under 8 samples
 *
 * Source: ours
 */
export function detectBodyRaises(
  trace: Trace,
  placement: 'trunk' | 'platform',
  subject: { readonly bodyMassKg?: number },
  settings: BodySettings,
): Detection {
  const channels = bodyChannels(trace, placement);
  const body = bodyAcceleration(channels, placement, subject.bodyMassKg, {
    ...settings,
    rateHz: settings.motionRateHz,
  });
  const signal = body.span && searchSet(modelSignal(body, body.span, settings), settings);
  if (signal === undefined || signal.acceleration.length < LEAST_S * settings.modelRateHz)
    return nothing(body, settings);
  const cells = signal.acceleration.length;
  const timeOf = (cell: number): number => signal.startS + cell / settings.modelRateHz;
  const { fitted, list, barred } = possibleSet(signal, body, settings);
  const barredCells = Math.round(barred.reduce((sum, span) => sum + durationS(span), 0) * settings.modelRateHz);
  const hidden = list.raises.length > 0 ? 0 : hiddenRepetitions(fitted.rhythm, cells - barredCells, settings);
  const elsewhere = mergeIntervals([...otherSpans(fitted, cells, timeOf), ...barred]);
  const stance = stanceBefore(list.raises[0]?.startS, timeOf(0), timeOf(cells), elsewhere, settings);
  const motion = bodyMotion(body, list.raises, elsewhere, stance, settings.postureCutoffHz);
  const countHigh = Math.max(list.countHigh, hidden);
  const found = { ...list, countHigh, motion, stance, stillSdM: stillSd(fitted) };
  const weight = weightFrom(body, list.raises, stance);
  const issues = bodyIssues(body, list.raises, barred.length > 0, elsewhere, stance, weight);
  if (hidden > 0) {
    issues.push({
      code: 'buried',
      severity: 'warning',
      fromS: timeOf(0),
      toS: timeOf(cells),
      details: { atMost: hidden },
    });
  }
  if (weight === undefined) return { ...found, issues };
  return { ...found, bodyWeightN: weight.weightN, bodyWeightUN: weight.uncertaintyN, issues };
}

/** A set, its repetitions, and the spans in which something else was taken for repetitions at first. */
interface Possible {
  readonly fitted: FittedSet;
  readonly list: RaiseList;
  readonly barred: readonly Interval[];
}

/** Most times that a recording is fitted again without what cannot be heel raises. */
const MOST_FITS = 4;

/** The set that is left when bouts that cannot be heel raises are barred, one fit after the other. */
function possibleSet(signal: ModelSignal, body: BodyAcceleration, settings: BodySettings): Possible {
  const barred: Interval[] = [];
  const marks = Uint8Array.from(signal.barred);
  const cellOf = (timeS: number): number => Math.max(0, Math.round((timeS - signal.startS) * settings.modelRateHz));
  for (let fits = 1; ; fits++) {
    const { fitted, list } = listedSet({ ...signal, barred: marks }, body, settings);
    const isWithinReach = fitted.rhythm.riseM < settings.mostRiseM;
    const bouts = isWithinReach
      ? impossibleBouts(list.raises, body, settings)
      : boutSpans(list.raises, settings.boutRestS);
    if (bouts.length === 0) return { fitted, list, barred };
    if (fits === 1 && list.raises.every((one) => bouts.some((bout) => contains(bout, one.topS)))) {
      const quick = quickInstead(signal, list, body, settings);
      if (quick !== undefined) return { ...quick, barred };
    }
    barred.push(...bouts);
    if (fits === MOST_FITS) return { fitted, list: { raises: [], doubtful: [], countLow: 0, countHigh: 0 }, barred };
    for (const { fromS, toS } of bouts) marks.fill(1, cellOf(fromS), cellOf(toS));
  }
}

/**
 * Quick repetitions in place of slower ones that cannot be heel raises: of two that were taken for one the rest between them is
 * gone up and down once more. Undefined where they are not many more, or cannot be heel raises either.
 */
function quickInstead(
  signal: ModelSignal,
  slower: RaiseList,
  body: BodyAcceleration,
  settings: BodySettings,
): Listed | undefined {
  const { disturbed: _, ...withoutImpacts } = signal;
  for (const form of signal.impacts.some((is) => is > 0) ? [signal, withoutImpacts] : [signal]) {
    const quick = listedSet(form, body, settings, true);
    const { fitted, list } = quick;
    const isMore = list.raises.length >= settings.leastInstead * slower.raises.length;
    const isWithinReach = fitted.rhythm.riseM < settings.mostRiseM;
    if (fitted.evidence > settings.leastEvidenceFilled && isMore && isWithinReach) {
      if (impossibleBouts(list.raises, body, settings).length === 0) return quick;
    }
  }
  return undefined;
}

interface Listed {
  readonly fitted: FittedSet;
  readonly list: RaiseList;
}

/** The set that explains a recording best, and its repetitions. */
function listedSet(given: ModelSignal, body: BodyAcceleration, settings: BodySettings, isQuick = false): Listed {
  const { signal, fitted } = fitAcrossKnocks(given, settings, isQuick);
  const cells = signal.acceleration.length;
  const all = agreedRepetitions(fitted, (cell) => signal.startS + cell / settings.modelRateHz);
  const sure = convincing(fitted, all, cells, settings);
  const agreed = sure ? all : standingOut(all, fitted, settings);
  const single = riseEstimates(agreed.repetitions, body, fitted.rhythm, settings);
  const { repetitions, rises } = jointTiming(agreed.repetitions, single, signal, fitted.rhythm, settings);
  const list = raiseList(repetitions, rises, agreed.counts, body.gaps, settings);
  // what may be noise alone may as well be the set that it looks like
  const possible = sure || fitted.evidence <= settings.leastEvidenceOfSet ? 0 : Math.round(median(all.counts));
  return { fitted, list: { ...list, countHigh: Math.max(list.countHigh, possible) } };
}

/** Whether the evidence is for a set: noise that fills the recording can be fitted by a rhythm made for it. */
function convincing(fitted: FittedSet, agreed: AgreedSet, cells: number, settings: BodySettings): boolean {
  const { leastEvidenceOfSet, leastEvidenceFilled, leastEvidenceEach, littleHeldShare, muchHeldShare, few } = settings;
  const heldS = agreed.repetitions.reduce((sum, one) => sum + one.share * (one.endS - one.startS), 0);
  const number = agreed.repetitions.reduce((sum, one) => sum + one.share, 0);
  const held = heldS / (cells / settings.modelRateHz);
  const filled = Math.min(1, Math.max(0, (held - littleHeldShare) / (muchHeldShare - littleHeldShare)));
  // a handful of them can be noise; twice as many, one after the other, cannot
  const seldom = Math.min(1, Math.max(0, 2 - number / few));
  const asked = seldom * filled * (leastEvidenceFilled + number * leastEvidenceEach);
  return fitted.evidence > Math.max(leastEvidenceOfSet, asked);
}

/** What is left of a set that noise may feign: repetitions so large beside the noise that each of them is none. */
function standingOut(all: AgreedSet, fitted: FittedSet, settings: BodySettings): AgreedSet {
  const clear = (one: Agreed): boolean =>
    one.share >= settings.clearShare && one.ownRiseM > settings.clearRatio * Math.sqrt(one.ownVariance);
  const number = fitted.evidence > settings.leastEvidence ? all.repetitions.filter(clear).length : 0;
  const repetitions = all.repetitions.map((one) =>
    clear(one) ? one : { ...one, share: Math.min(one.share, settings.doubtfulShare) },
  );
  return { repetitions, counts: all.counts.map(() => number) };
}

/** Shorter recordings hold no repetition with rest around it [s]. */
const LEAST_S = 1;

function nothing(body: BodyAcceleration, settings: BodySettings): Detection {
  const motion = bodyMotion(body, [], [], undefined, settings.postureCutoffHz);
  const issues = bodyIssues(body, [], false, [], undefined, undefined);
  return { raises: [], doubtful: [], countLow: 0, countHigh: 0, motion, stance: undefined, stillSdM: 0, issues };
}

/** Standing between the last other movement and the first repetition; before the end when there is none. */
function stanceBefore(
  firstS: number | undefined,
  fromS: number,
  toS: number,
  elsewhere: readonly Interval[],
  settings: BodySettings,
): Interval | undefined {
  const endS = firstS ?? toS;
  const begins = elsewhere.filter((span) => span.fromS < endS).map((span) => span.toS);
  const beginS = Math.max(fromS, ...begins);
  return endS - beginS >= settings.leastStanceS ? { fromS: beginS, toS: endS } : undefined;
}

/** Weight from the quiet stance; without one, from the whole of the set, which begins and ends at rest. */
function weightFrom(
  body: BodyAcceleration,
  raises: readonly Raise[],
  stance: Interval | undefined,
): BodyWeight | undefined {
  const { force, sampleRateHz, startS, span } = body;
  if (force === undefined || span === undefined) return undefined;
  const quiet = stance && bodyWeight(force, sampleRateHz, startS, stance);
  const last = raises.at(-1);
  const set = last === undefined ? span : { fromS: raises[0].startS, toS: last.endS };
  return quiet ?? bodyWeight(force, sampleRateHz, startS, set);
}

/** Standard deviation of the rise that standing still alone would give in a repetition of the set's duration. */
function stillSd(fitted: FittedSet): number {
  const { rhythm, bank, correlations } = fitted;
  const wantedS = Math.exp(rhythm.logDuration);
  let best = 0;
  bank.templates.forEach((template, k) => {
    if (Math.abs(template.durationS - wantedS) < Math.abs(bank.templates[best].durationS - wantedS)) best = k;
  });
  return Math.sqrt(rhythm.noiseVariance / correlations.energies[best]);
}

function bodyIssues(
  body: BodyAcceleration,
  raises: readonly Raise[],
  barred: boolean,
  elsewhere: readonly Interval[],
  stance: Interval | undefined,
  weight: BodyWeight | undefined,
): Issue[] {
  const { startS, sampleRateHz, upward, gaps, spikes, force } = body;
  const whole = { fromS: startS, toS: startS + upward.length / sampleRateHz };
  const issues: Issue[] = gaps.map((gap) => ({ code: 'gap', severity: 'warning', ...gap }));
  if (spikes > 0) issues.push({ code: 'spikes', severity: 'note', ...whole, details: { count: spikes } });
  if (raises.length > 0 && stance === undefined)
    issues.push({ code: 'no-quiet-stance', severity: 'warning', ...whole });
  if (raises.length > 0 || barred) {
    for (const span of elsewhere) issues.push({ code: 'movement-outside-set', severity: 'note', ...span });
  }
  if (force !== undefined && weight === undefined)
    issues.push({ code: 'no-body-weight', severity: 'invalid', ...whole });
  return issues;
}
