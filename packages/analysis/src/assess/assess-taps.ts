import { BELOW_SHARES, COUNT_SHARES, CRITERION_IDS, type CriterionId } from '@surae/shared';
import { type Tap, tapsOf } from '../hand/tap-list.ts';
import type { Issue } from '../issue.ts';
import { counterInput } from '../raises/block-trace.ts';
import { type CriterionFinding, notObserved } from '../raises/criteria/finding.ts';
import { type Judgement, MARKED } from '../raises/criteria/judge-repetition.ts';
import { faultEnd } from '../raises/end-rule.ts';
import { heightFade } from '../raises/fatigue.ts';
import { setTempo } from '../raises/tempo.ts';
import type { Trace } from '../trace.ts';
import { faultsOf } from './count-of-set.ts';
import { effortOf } from './effort.ts';
import { protocolFingerprint } from './fingerprint.ts';
import { NO_WORK } from './repetition-work.ts';
import type { AssessedRepetition, Count, GateReason, Report, SetMeasures, TestEnd } from './report.ts';
import type { AssessmentRequest, TesterMark } from './request.ts';
import { seatedLoad } from './seated-load.ts';
import type { HandSettings, Settings } from './settings.ts';
import { testEnd } from './test-end.ts';

/** A fault is marked when it was seen, which is after the tap of its raise; one before the first tap belongs to the first. */
function marksOf(taps: readonly Tap[], i: number, marks: readonly TesterMark[]): CriterionId[] {
  const fromS = i === 0 ? Number.NEGATIVE_INFINITY : taps[i].atS;
  const toS = taps.at(i + 1)?.atS ?? Number.POSITIVE_INFINITY;
  return marks.filter(({ atS }) => atS >= fromS && atS < toS).map(({ criterion }) => criterion);
}

/** What was not marked was not judged: it neither passes nor fails. */
function judgementOf(marked: readonly CriterionId[]): Judgement {
  const criteria = Object.fromEntries(
    CRITERION_IDS.map((id) => [id, marked.includes(id) ? MARKED : notObserved('placement')] as const),
  ) as Record<CriterionId, CriterionFinding>;
  const isMarked = marked.length > 0;
  return {
    criteria,
    headline: CRITERION_IDS.find((id) => marked.includes(id)) ?? null,
    passes: !isMarked,
    valid: isMarked ? 'no' : 'cannot_tell',
    probabilityValid: isMarked ? 0 : null,
    borderline: false,
  };
}

function repetitionOf(
  taps: readonly Tap[],
  i: number,
  judgement: Judgement,
  afterEnd: boolean,
  { tapUS }: HandSettings,
): AssessedRepetition {
  const { atS } = taps[i];
  return {
    index: i + 1,
    startS: null,
    startUS: null,
    topS: atS,
    topUS: tapUS,
    endS: null,
    endUS: null,
    heightM: null,
    heightUM: null,
    riseM: null,
    riseUM: null,
    depthM: null,
    percentOfReference: null,
    percentOfReferenceU: null,
    upS: null,
    topHoldS: null,
    downS: null,
    lowS: null,
    cycleS: null,
    periodS: i === 0 ? null : atS - taps[i - 1].atS,
    beatErrorS: null,
    work: NO_WORK,
    meanPowerW: null,
    peakPowerW: null,
    ...judgement,
    probability: 1,
    longestGapS: 0,
    afterEnd,
  };
}

function measuresOf(
  taps: readonly Tap[],
  cycleTargetS: number | undefined,
  { tapUS, periodRelativeUMost }: HandSettings,
): SetMeasures {
  const spans = taps.length - 1;
  const meanPeriodS = spans > 0 ? (taps[spans].atS - taps[0].atS) / spans : Number.NaN;
  // the errors of the first and of the last tap are left in the mean of the periods between them
  const carries = (Math.SQRT2 * tapUS) / spans <= periodRelativeUMost * meanPeriodS;
  const parts = carries ? taps.map(({ atS }, i) => (i === 0 ? {} : { periodS: atS - taps[i - 1].atS })) : [];
  return {
    heightsMeasured: 0,
    timeToEndS: null,
    peakHeightM: null,
    meanHeightM: null,
    firstThreeHeightM: null,
    lastThreeHeightM: null,
    displacementM: null,
    scoredDisplacementM: null,
    work: NO_WORK,
    scoredWork: NO_WORK,
    meanPowerW: null,
    peakPowerW: null,
    timeUnderTensionS: null,
    tempo: setTempo(parts, cycleTargetS),
    fatigue: heightFade([], undefined, BELOW_SHARES),
    countAtFraction: COUNT_SHARES.map((fraction) => ({ fraction, count: null })),
  };
}

/** Pairs of taps that stand and may be one. */
function closePairs(taps: readonly Tap[], { apartLeastS }: HandSettings): number {
  return taps.filter(({ atS }, i) => i > 0 && atS - taps[i - 1].atS < apartLeastS).length;
}

function countOf(judgements: readonly Judgement[], close: number, end: TestEnd, { countMost }: HandSettings): Count {
  const attempted = judgements.length;
  const valid = judgements.filter(({ passes }) => passes).length;
  const scored = judgements.filter(({ passes }, i) => passes && i < end.atRepetition).length;
  const low = (count: number): number => Math.max(0, count - countMost - close);
  const high = (count: number): number => count + countMost;
  return {
    attempted,
    valid,
    scored,
    borderline: 0,
    cannotTell: attempted - judgements.filter((one) => one.valid === 'no').length,
    low: low(attempted),
    high: high(attempted),
    validLow: low(valid),
    validHigh: high(valid),
    scoredLow: low(scored),
    scoredHigh: high(scored),
    censored: end.class === 'censored',
  };
}

function issuesOf(all: readonly Tap[], close: number): Issue[] {
  const [first, last] = [all.at(0), all.at(-1)];
  if (first === undefined || last === undefined) return [];
  const whole = { fromS: first.atS, toS: last.takenBackAtS ?? last.atS };
  const back = all.filter(({ takenBackAtS }) => takenBackAtS !== null).length;
  return [
    ...(close === 0
      ? []
      : [{ code: 'taps-too-close', severity: 'warning', ...whole, details: { count: close } } as const]),
    ...(back === 0 ? [] : [{ code: 'taps-taken-back', severity: 'note', ...whole, details: { count: back } } as const]),
  ];
}

/**
 * Report on a set that somebody counted by hand: how many taps stand, within which bounds, and the mean tempo where taps can
 * carry it. No criterion was observed but those that were marked, and nothing else was measured.
 *
 * @param trace - instants of the taps [s]
 * @param request - side, protocol, subject, and what is known of the trial [-]
 * @param settings - see {@link HandSettings} and the limits of effort [-]
 * @returns the report, plain JSON; what was not measured is null in it [-]
 * @throws {@link InputError} `missing-channel` without taps; `not-increasing`, `length-mismatch`, `out-of-range` for taps that cannot be
 *
 * Source: common practice, no source
 */
export function assessTaps(trace: Trace, request: AssessmentRequest, settings: Settings): Report {
  const { protocol, side, context } = request;
  const { parameters } = protocol;
  const { hand, judging } = settings;
  const { taps, standing } = tapsOf(counterInput(trace, 'hand'));
  const marks = context?.marks ?? [];
  const judgements = standing.map((_, i) => judgementOf(marksOf(standing, i, marks)));
  const faults = faultEnd(
    judgements.map((one) => ({ faults: faultsOf(one), judged: true })),
    parameters.endFaultsInARow.value ?? Number.POSITIVE_INFINITY,
  );
  const end = testEnd(
    standing.map(({ atS }) => ({ startS: null, topS: atS, endS: null })),
    parameters,
    faults,
    context?.endReason,
  );
  const close = closePairs(standing, hand);
  const count = countOf(judgements, close, end, hand);
  const cycleTargetS = parameters.cue.value === 'none' ? undefined : (parameters.cycleTarget.value ?? undefined);
  const measures = measuresOf(standing, cycleTargetS, hand);
  const reasons: GateReason[] = [
    ...(standing.length === 0 ? (['no-repetition'] as const) : []),
    ...(side === undefined ? (['side-unknown'] as const) : []),
  ];
  return {
    placement: 'hand',
    side: side ?? null,
    protocol: {
      id: protocol.id,
      version: protocol.version,
      fingerprint: protocolFingerprint(protocol, 'hand', parameters.referenceRule.value),
    },
    kind: 'not-measured',
    repetitions: judgements.map((one, i) => repetitionOf(standing, i, one, i >= end.atRepetition, hand)),
    doubtful: [],
    count,
    reference: null,
    end,
    measures,
    effort: effortOf(measures, end, context, judging),
    seated: seatedLoad(request, count, end, judging.massRelativeU),
    gate: { usable: reasons.length > 0 ? 'cannot_tell' : 'yes', reasons },
    stance: null,
    bodyWeightN: null,
    bodyWeightUN: null,
    withheld: ['counted-by-hand'],
    issues: issuesOf(taps, close),
    blockDifferences: [],
  };
}
