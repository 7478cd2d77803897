export { type Agreement, type AgreementSettings, agreementOf, type PairAgreement } from './agreement/agreement.ts';
export type { Bounded, Bounds } from './agreement/bounds.ts';
export type { CountAgreement } from './agreement/count-agreement.ts';
export { detectableChange } from './agreement/detectable-change.ts';
export { tQuantile, tTwoSided } from './agreement/distributions.ts';
export type { FTest, Intraclass, IntraclassEstimate, IntraclassForm } from './agreement/intraclass.ts';
export {
  INTRACLASS_WORDS,
  type IntraclassRange,
  type IntraclassWord,
  intraclassWords,
} from './agreement/intraclass-words.ts';
export { cohenKappa, type Kappa } from './agreement/kappa.ts';
export type { Limits, Trend } from './agreement/limits-of-agreement.ts';
export type { MeasurementError } from './agreement/measurement-error.ts';
export { boundedDeviation } from './agreement/measurement-error.ts';
export {
  errorAbove,
  intraclassWidth,
  limitHalfWidth,
  peopleForError,
  peopleForIntraclass,
  peopleForLimits,
} from './agreement/planning.ts';
export type { LeftOut, Ratings } from './agreement/ratings.ts';
export type { Variation } from './agreement/typical-error.ts';
export type { UsableError } from './agreement/usable-error.ts';
export { type WeightedKappa, type WordWeights, weightedKappa } from './agreement/weighted-kappa.ts';
export { assess } from './assess/assess.ts';
export {
  assessHops,
  type HopPlacement,
  type HopReport,
  type HopTestRequest,
  hopFingerprint,
} from './assess/assess-hops.ts';
export { assessPulls } from './assess/assess-pulls.ts';
export { type Beside, type BesideFindings, type BesideWork, findBeside } from './assess/beside-detection.ts';
export { type ColumnValue, columnValue, type NestedValues, nestedValues } from './assess/column-values.ts';
export { defaultSettings } from './assess/default-settings.ts';
export { agreementDefaults } from './assess/defaults/agreement.ts';
export { blockCounterDefaults } from './assess/defaults/block-counter.ts';
export { bodyDefaults } from './assess/defaults/body.ts';
export { effortDefaults } from './assess/defaults/efforts.ts';
export { heelDefaults } from './assess/defaults/heel.ts';
export { hopDefaults } from './assess/defaults/hops.ts';
export { setupDefaults } from './assess/defaults/setup.ts';
export { effortSettingsBy } from './assess/effort-settings-by.ts';
export { canonicalJson, protocolFingerprint, pullFingerprint } from './assess/fingerprint.ts';
export { type JudgingExtras, judge } from './assess/judge.ts';
export { type Overridden, type OverrideProblem, overrideSettings, withParameters } from './assess/override.ts';
export type {
  AssessedEffort,
  PullGateReason,
  PullReport,
  PullScore,
  PullTrials,
  PullWithheldReason,
  TrialRate,
} from './assess/pull-report.ts';
export type { PullContext, PullPlacement, PullSubject, PullTestRequest } from './assess/pull-request.ts';
export { type EffortRow, effortRow, type PullRow, pullRow } from './assess/pull-rows.ts';
export { type HandVerdict, type RecountRequest, recounted } from './assess/recount.ts';
export type {
  AssessedRepetition,
  BlockDifference,
  Count,
  Effort,
  Gate,
  GateReason,
  NoMaximumReason,
  Reference,
  Report,
  SeatedLoad,
  SetMeasures,
  TestEnd,
  WithheldReason,
  Work,
} from './assess/report.ts';
export type { AssessmentRequest, PracticeRaise, Subject, TesterMark, TrialContext } from './assess/request.ts';
export { isSeated } from './assess/seated-load.ts';
export type { JudgingSettings, Settings, SignalLimits } from './assess/settings.ts';
export { endClass } from './assess/test-end.ts';
export { type ChangeZone, changeZone, type DetectableChange } from './compare/change-zone.ts';
export type { ComparedLegs, LegsUnder } from './compare/compared-legs.ts';
export { countStandardError } from './compare/count-repeatability.ts';
export {
  type EnduranceEffort,
  type EnduranceInput,
  enduranceEffort,
  type IsometricInput,
  type IsometricLimits,
  type IsometricQuality,
  type IsometricTrials,
  isometricEffort,
} from './compare/effort-quality.ts';
export type { ForceScale, ScaleBetween } from './compare/force-scale.ts';
export { type Governing, governingSide } from './compare/governing-side.ts';
export { importantChange } from './compare/important-change.ts';
export {
  type Irritability,
  type IrritabilityAnswers,
  type IrritabilityInput,
  irritabilityOf,
} from './compare/irritability.ts';
export { type LegFinding, legFinding } from './compare/leg-finding.ts';
export {
  type ChangeUnder,
  type LegCourse,
  type LegVisit,
  legOverVisits,
  type SinceVisit,
} from './compare/leg-over-visits.ts';
export { type LegsOfVisit, legsOfVisit, type VisitLegs } from './compare/legs-of-visit.ts';
export { boundedDifference, boundedRatio, type LogRatio, logRatio, probabilityBelow } from './compare/log-ratio.ts';
export type { MeasuredValue } from './compare/measured-value.ts';
export { type OwnErrors, type OwnErrorsOrigin, ownErrorsFrom } from './compare/own-errors.ts';
export { ownRatioError } from './compare/own-ratio-error.ts';
export {
  type PainFinding,
  type PainInput,
  type PainLimits,
  painFinding,
  type SetPain,
} from './compare/pain-and-capacity.ts';
export type { ComparedReport, EarlierInjury, PairCircumstances } from './compare/pair.ts';
export { type PlainLimits, plainVerdict } from './compare/plain-verdict.ts';
export { publishedErrors } from './compare/published-errors.ts';
export { type PullFinding, pullFinding } from './compare/pull-finding.ts';
export { type PullVisit, pullLegsOfVisit, pullOverVisits, type VisitPulls } from './compare/pull-legs.ts';
export {
  circumstanceBlocks,
  RATIO_BLOCKS,
  type RatioBlock,
  ratioBlocks,
  restsOnConfirmedInjury,
} from './compare/ratio-blocks.ts';
export { type OwnRatioError, type RatioError, ratioErrorOf } from './compare/ratio-error.ts';
export {
  type NoReference,
  type NoReferenceReason,
  type ReferenceBeside,
  type ReferenceQuestion,
  type ReferencesFound,
  referencesFor,
} from './compare/reference-lookup.ts';
export type { Reliability, ReliabilitySource } from './compare/reliability.ts';
export { chooseReliability, type OwnReliability, type ReliabilityQuestion } from './compare/reliability-choice.ts';
export { type RepeatedTests, worthOfRepeated } from './compare/repeated-tests.ts';
export { scoredRepetitions } from './compare/scored-repetitions.ts';
export { SET_BLOCKS, type SetBlock, setBlocks } from './compare/set-blocks.ts';
export { bestReach, type ReachChange, type ReachUnit, reachChange } from './compare/shank-reach.ts';
export type { SideCaution, SideCircumstances } from './compare/side-cautions.ts';
export {
  type BlockedBy,
  compareSets,
  compareValues,
  type NoSideRatio,
  type RatioDirection,
  type RatioRules,
  ratioDirection,
  type SideBlock,
  type SideComparison,
  type SideRatio,
  type UnderLine,
} from './compare/side-comparison.ts';
export {
  type IdentityDifference,
  identityDifferences,
  type TestIdentity,
  testIdentity,
} from './compare/test-identity.ts';
export { VALUE_BLOCKS, type ValueBlock, valueBlocks } from './compare/value-blocks.ts';
export {
  type ChangeCaution,
  changeBetween,
  type NoChangeReason,
  type SideBySide,
  trendOver,
  type VisitChange,
  type VisitResult,
  type VisitTrend,
} from './compare/visit-change.ts';
export type {
  LegFacts,
  OwnRatios,
  OwnReliabilities,
  PersonFacts,
  TestedLeg,
  TestedPull,
} from './compare/visit-facts.ts';
export {
  type CriteriaVariant,
  robustness,
  scoresAtLeast,
  type WhatIf,
  type WhatIfCase,
  whatIf,
} from './compare/what-if.ts';
export { bonettPeople, powerOfIntraclass, walterPeople } from './design/intraclass-people.ts';
export { leastCount, MOST_COUNT } from './design/least-count.ts';
export { deviationOfLegs, type MeanAim, type MeanDesign, powerOfGroups, powerOfPairs } from './design/mean-power.ts';
export { meanHalfWidth } from './design/mean-width.ts';
export { ACCEPT_CODES, type Acceptance, type AcceptCode, type AcceptFinding } from './efforts/acceptance.ts';
export { type DerivedForce, derivedForce, type ForceContext } from './efforts/derived-units.ts';
export type { DistinctStart } from './efforts/distinct-start.ts';
export type { EarlyRise, ReachedShare } from './efforts/early-rise.ts';
export type { EffortMethod, EffortSettings } from './efforts/effort-settings.ts';
export type { Figure } from './efforts/figure.ts';
export { type EffortRequest, type FoundEfforts, findEfforts, type NoEffort } from './efforts/find-efforts.ts';
export type { GrossAndNet, IsometricEffort } from './efforts/isometric-effort.ts';
export type { Polarity } from './efforts/polarity.ts';
export type { PullUnit } from './efforts/pull-signal.ts';
export type { NoRateReason, RiseRate } from './efforts/rise-rates.ts';
export { type AnotherReason, summarizeTrials, type TrialSummary } from './efforts/trials.ts';
export { InputError, type InputErrorCode } from './errors.ts';
export { type Tap, TapList, takeTaps, tapsOf } from './hand/tap-list.ts';
export { findHops, type HopRequest } from './hops/find-hops.ts';
export type { Hop, HopReason } from './hops/hop.ts';
export {
  type DayRange,
  type EntryVerdict,
  HOP_ENTRY_CODES,
  type HopEntry,
  type HopEntryCode,
  type HopEntryFacts,
  type HopEntryFinding,
  hopEntry,
} from './hops/hop-entry.ts';
export type { HopCaution, HopSeries, HopWithheld, NoSeriesReason, SeriesVerdict } from './hops/hop-series.ts';
export type { HopSettings } from './hops/hop-settings.ts';
export type { HopMean, HopMeasure, HopMeasureName } from './hops/hop-summary.ts';
export { type LegStiffness, legStiffness } from './hops/leg-stiffness.ts';
export type { Issue, IssueCode } from './issue.ts';
export type { FootGeometry } from './movement/heel-height.ts';
export { BlockCounter, type BlockCounterOptions, type LiveState } from './raises/block-counter.ts';
export type { ProvisionalRaise, RaisePhase } from './raises/block-machine.ts';
export type {
  BlockBodySettings,
  BlockCounterSettings,
  BlockFootSettings,
  BlockMovementSettings,
} from './raises/block-settings.ts';
export { counterInput } from './raises/block-trace.ts';
export type { BodySettings } from './raises/body/settings.ts';
export type {
  CriterionFinding,
  CriterionResult,
  Evidence,
  NotObservedReason,
  Verdict,
} from './raises/criteria/finding.ts';
export { detectBodyRaises } from './raises/detect-body.ts';
export { detectHeelRaises } from './raises/detect-heel.ts';
export type { Detection, Doubtful, DoubtReason, Motion, Raise } from './raises/detection.ts';
export type { HeightFade } from './raises/fatigue.ts';
export type { HeelSettings } from './raises/heel/heel-settings.ts';
export { type Estimate, slopeEstimate } from './raises/slope-estimate.ts';
export { steppedSlope } from './raises/stepped-slope.ts';
export type { SetTempo } from './raises/tempo.ts';
export { type CalibrationLine, calibrated, calibrationAge } from './setup/calibrated.ts';
export { type CalibrationError, calibrationError } from './setup/calibration-error.ts';
export {
  fiveLights,
  LIGHT_NAMES,
  type Light,
  type LightFacts,
  type LightName,
  type LightReason,
  type SetupPlacement,
} from './setup/five-lights.ts';
export { type FlexionAxis, type FlexionEvidence, flexionAxis } from './setup/flexion-axis.ts';
export {
  type GravityAxis,
  type GravityEvidence,
  gravityAxis,
  SIGNED_AXES,
  type SignedAxis,
} from './setup/gravity-axis.ts';
export type { Guess, Likely } from './setup/guess.ts';
export { KNOWN_UNITS } from './setup/known-units.ts';
export {
  type MassCalibration,
  type MassFit,
  type MassLevel,
  type MassRefusal,
  massLine,
} from './setup/mass-line.ts';
export { type MassRun, massRun } from './setup/mass-run.ts';
export { type PlacementClass, type PlacementEvidence, placementGuess } from './setup/placement-guess.ts';
export { pullSign, type SignEvidence } from './setup/pull-sign.ts';
export { type RestLoad, type RestLoadRefusal, restLoadOn } from './setup/rest-load.ts';
export type { SetupSettings } from './setup/setup-settings.ts';
export { type StillLevel, type Stretch, stillLevel } from './setup/still-level.ts';
export { type TurnAgreement, turnAgreement } from './setup/turn-agreement.ts';
export { type UnitEvidence, type UnitQuestion, unitGuess } from './setup/unit-guess.ts';
export {
  type EmptyBy,
  type LastZero,
  takeZero,
  type ZeroFacts,
  type ZeroRefusal,
  type ZeroTaken,
} from './setup/zero.ts';
export type { Interval } from './signal/intervals.ts';
export { quantile } from './signal/order-statistics.ts';
export { createRandom, type Random } from './signal/random.ts';
export type { Axis, Channel, ChannelGroup, Placement, Quantity, SensedPlacement, Side, Trace } from './trace.ts';
