import { requireRange } from '../check.ts';
import { type IsometricQuality, isometricEffort } from '../compare/effort-quality.ts';
import { derivedForce, type ForceContext } from '../efforts/derived-units.ts';
import type { Figure } from '../efforts/figure.ts';
import { findEfforts } from '../efforts/find-efforts.ts';
import type { IsometricEffort } from '../efforts/isometric-effort.ts';
import { pullSignal } from '../efforts/pull-signal.ts';
import { mean, standardDeviation } from '../signal/moments.ts';
import type { Trace } from '../trace.ts';
import { assessedEffort } from './assessed-effort.ts';
import { effortSettingsBy } from './effort-settings-by.ts';
import { pullFingerprint } from './fingerprint.ts';
import { pullGate } from './pull-gate.ts';
import { pullIssues } from './pull-issues.ts';
import type { PullReport, PullTrials, PullWithheldReason } from './pull-report.ts';
import type { PullSubject, PullTestRequest } from './pull-request.ts';
import { type AcceptedEffort, pullScore, pullTrials } from './pull-trials.ts';
import { type ScaleError, withScaleU } from './scale-error.ts';
import type { Settings } from './settings.ts';
import { endClass } from './test-end.ts';

/** Load at rest beside efforts; its uncertainty takes in how far it differs from one to the next. */
function restLoadOf(efforts: readonly IsometricEffort[]): Figure | null {
  if (efforts.length === 0) return null;
  const rests = Float64Array.from(efforts, ({ rest }) => rest.value);
  const own = Math.max(...efforts.map(({ rest }) => rest.u));
  return { value: mean(rests), u: rests.length < 2 ? own : Math.hypot(own, standardDeviation(rests)) };
}

/** Whether the trials show a maximum; a test of the rate of rise asks for none. */
function qualityOf(
  efforts: readonly IsometricEffort[],
  trials: PullTrials | null,
  { protocol }: PullTestRequest,
): IsometricQuality | null {
  const { effort, alikeGood, plateauLeast } = protocol.parameters;
  if (effort.value === 'fast') return null;
  // a clipped effort may have been as good as the best
  const peaksN = efforts.flatMap(({ acceptance, bestMean }): (number | null)[] => {
    if (acceptance.accepted === 'yes' && bestMean !== null) return [bestMean.net.value];
    if (acceptance.findings.some(({ code, met }) => code === 'warm-up' && met === 'no')) return [];
    return acceptance.findings.some(({ code, met }) => code === 'clipped' && met === 'no') ? [null] : [];
  });
  const best = trials?.bestMeanEffort ?? null;
  return isometricEffort(
    { peaksN, plateauS: best === null ? null : Math.max(0, efforts[best - 1].plateauS.value) },
    { trialsAlike: alikeGood.value ?? Number.POSITIVE_INFINITY, plateauLeast: plateauLeast.value ?? 0 },
  );
}

/** Which efforts were taken for warm-up pushes, and of which nobody can tell. */
function warmUpOf(efforts: readonly IsometricEffort[], told: number | undefined): PullReport['warmUp'] {
  const those = (wanted: 'no' | 'cannot_tell'): number[] =>
    efforts.flatMap(({ acceptance }, i) =>
      acceptance.findings.some(({ code, met }) => code === 'warm-up' && met === wanted) ? [i + 1] : [],
    );
  return { told: told ?? null, efforts: those('no'), undecided: those('cannot_tell') };
}

/** The error of the calibration as told; what was not told is 0 here, and said with the report. */
function scaleOf({ calibrationRelativeU, calibrationZeroU, calibrationCorrelation }: PullSubject): ScaleError {
  const scale = {
    relativeU: calibrationRelativeU ?? 0,
    zeroU: calibrationZeroU ?? 0,
    correlation: calibrationCorrelation ?? 0,
  };
  const { relativeU, zeroU, correlation } = scale;
  requireRange(relativeU, relativeU >= 0 && relativeU < 1, 'calibrationRelativeU', '0 to 1');
  requireRange(zeroU, zeroU >= 0, 'calibrationZeroU', '0 or more');
  requireRange(correlation, Math.abs(correlation) <= 1, 'calibrationCorrelation', '-1 to 1');
  return scale;
}

function withheldOf(
  { subject }: PullTestRequest,
  unit: PullReport['unit'],
  score: PullReport['score'],
): PullWithheldReason[] {
  const held: readonly (readonly [PullWithheldReason, boolean])[] = [
    ['no-mass-for-strength', subject.bodyMassKg === undefined],
    ['no-forefoot-lever', unit === 'N' && subject.forefootLeverM === undefined],
    ['torque-only', unit === 'N.m'],
    ['no-calibration', subject.calibrationRelativeU === undefined],
    ['no-zero-error', subject.calibrationRelativeU !== undefined && subject.calibrationZeroU === undefined],
    ['no-rate', score.rule === 'mean-of-best-rates' && score.net === null],
  ];
  return held.filter(([, holds]) => holds).map(([reason]) => reason);
}

/**
 * Report on one recording of isometric efforts: every effort with its figures and whether it counts, what looked like one and
 * is none, the trials taken together, the score by the rule of the protocol in the units that what was measured allows.
 *
 * @param trace - the recording, SI units, native sample times [SI]
 * @param request - placement, side, protocol, what is known of person, rig and trial [-]
 * @param settings - every number that no protocol states; see {@link defaultSettings} [-]
 * @returns the report, plain JSON; poor data give issues in it, never an error [-]
 * @throws {@link InputError} `missing-channel` without force and torque; `too-short`, `not-finite`, `not-increasing`, `length-mismatch` for a trace that breaks its contract; `out-of-range` for a subject or a calibration, a number of warm-up pushes or a protocol out of range
 *
 * Source: ours
 */
export function assessPulls(trace: Trace, request: PullTestRequest, settings: Settings): PullReport {
  const { placement, protocol, subject, context, side } = request;
  const { parameters } = protocol;
  const { efforts: method, judging } = settings;
  const { bodyMassKg, forefootLeverM } = subject;
  if (bodyMassKg !== undefined) requireRange(bodyMassKg, bodyMassKg > 0, 'bodyMassKg', '> 0');
  const told = scaleOf(subject);
  const rules = effortSettingsBy(method, parameters);
  const found = findEfforts(
    trace,
    {
      polarity: subject.polarity ?? 'find',
      ...(subject.sensorLimit === undefined ? {} : { sensorLimit: subject.sensorLimit }),
      ...(context?.liftedAtS === undefined ? {} : { liftedAtS: context.liftedAtS }),
      ...(context?.warmUpPushes === undefined ? {} : { warmUpPushes: context.warmUpPushes }),
      asked: parameters.effort.value,
    },
    rules,
  );
  const accepted: AcceptedEffort[] = found.efforts.flatMap((effort, i) =>
    effort.acceptance.accepted === 'yes' ? [{ index: i + 1, effort }] : [],
  );
  // the forces are turned so that pulls are positive, and the zero is not
  const scale: ScaleError = { ...told, correlation: found.polarity.sign * told.correlation };
  const by = {
    rule: parameters.scoreRule.value,
    rateWindowS: parameters.rateWindow.value ?? Number.NaN,
    trials: rules.trials,
    scale,
  };
  const trials = pullTrials(accepted, by);
  const score = pullScore(trials, found.unit, by);
  const counting = accepted.map(({ effort }) => effort);
  const restLoad = restLoadOf(counting.length > 0 ? counting : found.efforts);
  const bodyWeightN = bodyMassKg === undefined ? null : bodyMassKg * judging.gravityMps2;
  const issues = pullIssues(
    {
      found,
      timesS: pullSignal(trace).timesS,
      placement,
      restLoad,
      bodyWeightN,
      gapS: rules.accept.gapS,
    },
    method,
    settings.signal,
  );
  const known: ForceContext = {
    ...(bodyMassKg === undefined ? {} : { bodyMassKg: { value: bodyMassKg, u: judging.massRelativeU * bodyMassKg } }),
    ...(forefootLeverM === undefined ? {} : { leverM: { value: forefootLeverM, u: method.signal.leverUM } }),
  };
  const inOthers = (net: Figure) => derivedForce(net, found.unit, known, judging.gravityMps2);
  const reasonGiven = context?.endReason ?? null;
  return {
    test: 'isometric',
    placement,
    side: side ?? null,
    protocol: { id: protocol.id, version: protocol.version, fingerprint: pullFingerprint(protocol, placement) },
    unit: found.unit,
    sampleRateHz: found.sampleRateHz,
    polarity: found.polarity,
    efforts: found.efforts.map((effort, i) => assessedEffort(effort, i + 1, scale)),
    others: found.others,
    warmUp: warmUpOf(found.efforts, context?.warmUpPushes),
    trials,
    score,
    derived:
      trials === null
        ? null
        : {
            bestMean: trials.bestMean === null ? null : inOthers(trials.bestMean.net),
            bestPeak: inOthers(trials.bestPeak.net),
          },
    restLoad: restLoad === null ? null : withScaleU(restLoad, scale),
    calibrationRelativeU: subject.calibrationRelativeU ?? null,
    calibrationZeroU: subject.calibrationZeroU ?? null,
    calibrationId: subject.calibrationId ?? null,
    effort: qualityOf(found.efforts, trials, request),
    end: { reasonGiven, class: reasonGiven === null ? 'unknown' : endClass(reasonGiven) },
    gate: pullGate({
      found: found.efforts.length,
      accepted: accepted.length,
      leastTrials: parameters.leastTrials.value,
      issues,
      sideKnown: side !== undefined,
    }),
    withheld: withheldOf(request, found.unit, score),
    issues,
  };
}
