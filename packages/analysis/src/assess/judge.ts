import { type CriterionId, OBSERVABILITY, type Observability } from '@surae/shared';
import { ownUncertainty } from '../raises/common-error.ts';
import { judgeRepetition } from '../raises/criteria/judge-repetition.ts';
import type { SetUnderJudgement } from '../raises/criteria/subject.ts';
import type { Detection } from '../raises/detection.ts';
import { faultEnd } from '../raises/end-rule.ts';
import { movementRate } from '../raises/movement-rate.ts';
import { powerTrace } from '../raises/power.ts';
import { type ReferenceHeight, referenceHeight } from '../raises/reference-height.ts';
import { tempoParts } from '../raises/tempo.ts';
import type { Placement } from '../trace.ts';
import { assessedRepetition } from './assessed-repetition.ts';
import { countOf, faultsOf } from './count-of-set.ts';
import { effortOf } from './effort.ts';
import { protocolFingerprint } from './fingerprint.ts';
import { gateOf } from './gate.ts';
import { footGeometry, liftedMass, repetitionWork } from './repetition-work.ts';
import type { BlockDifference, Reference, Report } from './report.ts';
import { ownIssues, withheldReasons } from './report-notes.ts';
import type { AssessmentRequest } from './request.ts';
import { isSeated, seatedLoad } from './seated-load.ts';
import { setMeasures } from './set-measures.ts';
import type { JudgingSettings } from './settings.ts';
import { testEnd } from './test-end.ts';

/**
 * What a placement sees of each criterion.
 *
 * @param placement - of the sensor [-]
 * @returns how far it sees a criterion [-]
 *
 * Source: ours, see the notes in the criteria
 */
export function observabilityAt(placement: Placement): (criterion: CriterionId) => Observability {
  return (criterion) => OBSERVABILITY.find((entry) => entry.subject === criterion)?.by[placement] ?? 'not-observed';
}

/** What judging is told beyond the detection itself. */
export interface JudgingExtras {
  /** relative standard uncertainty that all heights of the set share; it cancels in ratios [-] */
  readonly commonRelativeU: number;
  /** how the block pass differed; empty when it was not run */
  readonly blockDifferences: readonly BlockDifference[];
}

function referenceOf(
  detection: Detection,
  request: AssessmentRequest,
  commonRelativeU: number,
): ReferenceHeight | undefined {
  const own = (one: { readonly heightM: number; readonly heightUM: number }) => ({
    heightM: one.heightM,
    heightUM: ownUncertainty(one.heightUM, one.heightM, commonRelativeU),
  });
  const { referenceRaises, referenceBest, referenceRaisedBy } = request.protocol.parameters;
  const practice = request.context?.familiarisation ?? [];
  return referenceHeight(
    detection.raises.map((raise) => ({ ...own(raise), usable: !raise.topInGap })),
    { raises: referenceRaises.value ?? 1, best: referenceBest.value ?? 1, raisedBy: referenceRaisedBy.value ?? 0 },
    practice.map((raise) => ({ ...own(raise), usable: true })),
  );
}

function marksOn(detection: Detection, request: AssessmentRequest, i: number): CriterionId[] {
  const fromS = detection.raises[i].startS;
  const toS = detection.raises.at(i + 1)?.startS ?? Number.POSITIVE_INFINITY;
  const marks = request.context?.marks ?? [];
  return marks.filter((mark) => mark.atS >= fromS && mark.atS < toS).map((mark) => mark.criterion);
}

function reported(
  reference: ReferenceHeight | undefined,
  practised: boolean,
  heightsKnown: boolean,
  commonRelativeU: number,
): Reference | null {
  if (reference === undefined) return null;
  return {
    rule: practised ? 'best-two-of-familiarisation' : 'best-two-of-first-repetitions',
    heightM: heightsKnown ? reference.heightM : null,
    heightUM: heightsKnown ? Math.hypot(reference.heightUM, commonRelativeU * reference.heightM) : null,
    fromRepetitions: reference.fromRepetitions,
    raised: reference.raised,
    ...(reference.fromRepetitions.length === 0 && reference.heightM > 0
      ? { ownRelativeU: reference.heightUM / reference.heightM }
      : {}),
  };
}

/**
 * Report on a detected set: measures and verdict of every attempted repetition, counts with their bounds, the end of the
 * test, measures of the set. What a placement cannot see is said, what is not known is null.
 *
 * @param detection - the attempted repetitions of the final pass [s, m]
 * @param request - placement, protocol, subject and what is known of the trial [-]
 * @param settings - see {@link JudgingSettings} [-]
 * @param extras - see {@link JudgingExtras} [-]
 * @returns the report, plain JSON [-]
 * @throws {@link InputError} `out-of-range` for a mass, a protocol parameter or a setting that is not positive where it must be
 *
 * Source: ours
 */
export function judge(
  detection: Detection,
  request: AssessmentRequest,
  settings: JudgingSettings,
  extras: JudgingExtras = { commonRelativeU: 0, blockDifferences: [] },
): Report {
  const { placement, protocol, subject, context } = request;
  const { parameters } = protocol;
  const heightsKnown = placement !== 'foot' || subject.heelLeverM !== undefined;
  const { commonRelativeU, blockDifferences } = extras;
  const reference = referenceOf(detection, request, commonRelativeU);
  const tempo = tempoParts(detection.raises);
  const rate = movementRate(detection.motion, settings.movementCutoffHz);
  const set: SetUnderJudgement = {
    detection,
    parameters,
    settings,
    reference,
    commonRelativeU,
    heightsKnown,
    tempo,
    rate,
    seenBy: observabilityAt(placement),
  };
  const judgements = detection.raises.map((_, i) => judgeRepetition(set, i, marksOn(detection, request, i)));
  const faults = faultEnd(
    judgements.map((one) => ({ faults: faultsOf(one), judged: one.probabilityValid !== null })),
    parameters.endFaultsInARow.value ?? Number.POSITIVE_INFINITY,
  );
  const end = testEnd(detection.raises, parameters, faults, context?.endReason);
  const seated = isSeated(protocol);
  const mass = liftedMass(request, settings.massRelativeU);
  const geometry = footGeometry(request);
  const { motion } = detection;
  const load =
    motion.forceN === undefined
      ? mass && ({ kind: 'mass', massKg: mass.massKg, gravityMps2: settings.gravityMps2 } as const)
      : ({ kind: 'force', forceN: motion.forceN } as const);
  // a seated load does not move with the heel: its power is not that of the heel
  const powerW =
    heightsKnown && load && !seated ? powerTrace(motion, rate, load, settings.movementCutoffHz) : undefined;
  const repetitions = detection.raises.map((raise, i) =>
    assessedRepetition(i, {
      set,
      judgement: judgements[i],
      work: repetitionWork(raise, { motion, rate, mass, geometry, heightsKnown, seated, settings }),
      powerW,
      afterEnd: i >= end.atRepetition,
    }),
  );
  const practised = (context?.familiarisation ?? []).length > 0;
  const referenceReport = reported(reference, practised, heightsKnown, commonRelativeU);
  const count = countOf(judgements, set, end);
  const measures = setMeasures({
    detection,
    repetitions,
    tempo,
    referenceOnTraceM: reference?.heightM,
    heightsKnown,
    cycleTargetS: parameters.cue.value === 'none' ? undefined : (parameters.cycleTarget.value ?? undefined),
    endAt: end.atRepetition,
  });
  const rule = practised ? 'best-two-of-familiarisation' : 'best-two-of-first-repetitions';
  return {
    placement,
    side: request.side ?? null,
    protocol: {
      id: protocol.id,
      version: protocol.version,
      fingerprint: protocolFingerprint(protocol, placement, rule),
    },
    kind: motion.kind,
    repetitions,
    doubtful: detection.doubtful,
    count,
    reference: referenceReport,
    end,
    measures,
    effort: effortOf(measures, end, context, settings),
    seated: seatedLoad(request, count, end, settings.massRelativeU),
    gate: gateOf(detection, request.side, settings),
    stance: detection.stance ?? null,
    bodyWeightN: detection.bodyWeightN ?? null,
    bodyWeightUN: detection.bodyWeightUN ?? null,
    withheld: withheldReasons(request, heightsKnown),
    issues: [...detection.issues, ...ownIssues(detection, reference, blockDifferences)],
    blockDifferences,
  };
}
