export {
  acceptedSet,
  acceptedVisit,
  automaticReport,
  handVerdict,
  type VerdictAgreement,
  verdictAgreement,
} from './accepted-set.ts';
export { type AmendmentRefused, type AmendmentRules, laidOver } from './amendments.ts';
export type { AroundVisit } from './around-told.ts';
export { aroundKinds, isBothSore, isOfEpisode, withAround } from './around-visit.ts';
export { calibrationTold } from './calibration-told.ts';
export {
  ageInDays,
  type CalibrationKept,
  type Certificate,
  calibrationSchema,
  certificateFor,
  certificatesOf,
} from './calibrations.ts';
export {
  type Casebook,
  type CasebookPerson,
  type CasebookProblem,
  type CasebookProblemCode,
  type CasebookVisit,
  casebookOf,
} from './casebook.ts';
export {
  answerKinds,
  type CaseloadEntry,
  caseloadKinds,
  caseloadOf,
  caseloadVersion,
  type VisitLine,
} from './caseload.ts';
export type { ChoiceBlock } from './choice/choice-block.ts';
export { choiceBlocks } from './choice/choice-blocks.ts';
export { type ChoiceFacts, type ChoiceLeg, choiceFacts, gradeOf, type LastTest } from './choice/choice-facts.ts';
export { type ChoiceEntry, type ChoiceOffer, choiceOffer } from './choice/choice-offer.ts';
export { type Choosable, choosablePulls, choosableRaises } from './choice/choosable.ts';
export { type HopCondition, type HopConditions, hopConditions } from './choice/hop-conditions.ts';
export {
  answered,
  type LadderState,
  type LegLadder,
  ladderLimit,
  ladderState,
  noLadder,
  type RungAnswer,
  takenBack,
  type VisitLadder,
} from './choice/ladder.ts';
export { chosenFor, isChosen, type RuleGoneOver, type TestChosen } from './choice/test-chosen.ts';
export { judgedProtocol, judgedPullProtocol } from './compare/judged-protocol.ts';
export { dayNumber, type LegOfVisit, type LegPast, type PastTest, pastOf, takenAlike } from './compare/leg-past.ts';
export { pairCircumstances } from './compare/pair-circumstances.ts';
export { pairFacts } from './compare/pair-facts.ts';
export { legFacts, personFacts } from './compare/told-facts.ts';
export { toldSide } from './compare/told-side.ts';
export { legPast, testedLeg, visitLegs } from './compare/visit-legs.ts';
export { pullPast, testedPull, visitPulls } from './compare/visit-pulls.ts';
export { type CopiedHistory, type CopiedSoreness, historyBefore, sorenessBefore } from './copied-forward.ts';
export { type DescriptionEntry, descriptionEntries, descriptionSchema } from './description-entries.ts';
export type { EndingEvent } from './ending-event.ts';
export { type Entry, entryOf } from './entry.ts';
export { type EpisodeCourse, episodeCourses, undoneWhy, undoOf } from './episodes/episode-course.ts';
export { factTold, isRuptureSuspected } from './facts-told.ts';
export { heldAgainst } from './held-against.ts';
export {
  holdsOf,
  inFlare,
  injuryOf,
  irritabilityAnswers,
  isTold,
  noHistory,
  proposedHistory,
  soreLegs,
} from './history.ts';
export { isJudgedByHand } from './judged-by-hand.ts';
export { type BodyKind, bodyVersion } from './kinds/body-kind.ts';
export type { AuditEntry, ClinicContact, ReliabilitySet } from './kinds/clinic-kinds.ts';
export { documentJsonSchema } from './kinds/document-schema.ts';
export { kindOf, kinds } from './kinds/kinds.ts';
export type { KneeToWall } from './kinds/knee-to-wall.ts';
export type {
  DoneItem,
  Episode,
  MorningCheck,
  OnFeet,
  PersonNote,
  PlanItem,
  QuestionnaireTotal,
  Run,
  RunsWhole,
  Target,
  VerdictByHand,
} from './kinds/person-kinds.ts';
export {
  amendmentRules,
  type BodyProblem,
  type BodyProblemCode,
  type BodyRead,
  countingDocuments,
  readBodies,
  readBody,
} from './kinds/read-body.ts';
export type {
  AssessedTrials,
  RaterKeyKept,
  RaterLinesKept,
  StudyDecisionKept,
  StudyKept,
} from './kinds/study-kinds.ts';
export { type FlareKnown, lastFlareOf, withFlareNow, withLastFlare } from './last-flare.ts';
export { swappedAt } from './legs-swapped.ts';
export { isSorenessTold, legsTested } from './legs-tested.ts';
export { isNewStart, type NewStartTold, newStartOf } from './new-start.ts';
export {
  noOwnErrors,
  type OwnErrorsEntry,
  type OwnErrorsGiven,
  type OwnErrorsInUse,
  type OwnErrorsKept,
  ownErrorsInUse,
  ownErrorsOf,
  ownErrorsSchema,
} from './own-errors.ts';
export {
  isInUse,
  type OwnRuleNumber,
  type OwnRulesEntry,
  ownNumbersInUse,
  ownRulesOf,
  ownRulesSchema,
} from './own-rules.ts';
export { ageReached, type Person, personOf, personSchema } from './person.ts';
export {
  type AmendedField,
  amended,
  amendedAsOf,
  amendedFields,
  amendmentOf,
  changeOf,
  type PersonAmendment,
  type PersonChange,
} from './person-amendment.ts';
export {
  type BegunPlan,
  type BegunPlanEntry,
  begunPlanKinds,
  begunPlanOf,
  begunPlanSchema,
} from './plan/begun-plan.ts';
export { type HeldLine, heldBack } from './plan/held-back.ts';
export {
  isForInsertion,
  isLoading,
  lowestOffered,
  type PlanFacts,
  type PlanLine,
  planBlocks,
  planFacts,
  planOpenBlocks,
} from './plan/plan-gate.ts';
export { holdsOn, type PlanOfDay, planAfter, planOf } from './plan/plan-of-day.ts';
export type { ProposalDeclined, ProposalDeclinedEvent } from './plan/proposal-declined.ts';
export { planItemSchema, wordsOnly } from './plan/words-only.ts';
export { endedWithPop, poppedSide, withRupture } from './popped.ts';
export {
  cutOffPractice,
  type PracticeEvent,
  type PracticeSet,
  practiceEventKinds,
  practiceFor,
} from './practice.ts';
export { afterPull, type PullEvent, pullEventKinds, pullSetOf } from './pull-events.ts';
export type { PullChoice, PullEnd, PullSet, PullTrial } from './pull-set.ts';
export { isRuptureFirst, type RaisesCounted, raisesCounted, testsSomebody } from './raises-counted.ts';
export { type Recount, recountSchema, recountsIn } from './recounts.ts';
export { countingOf, countingSets, restBetweenSidesS, restTakenS, secondsBetween } from './rest.ts';
export {
  isOfAnotherDay,
  isometricLocksOf,
  locksOf,
  mayTest,
  notesOf,
  type SafetyBlock,
  type SafetyGate,
  safetyLines,
} from './safety-gate.ts';
export { type SameLegTold, sameLegWhy } from './same-leg.ts';
export { liesAsItLay, type SameLegSigns, type SensorLay, sameLegSigns, turnedDeg } from './same-leg-signs.ts';
export {
  type AskedSubject,
  afterAnswer,
  answersAbout,
  answerTo,
  cannotTell,
  type SeenThen,
  type SensorAnswer,
  type SensorAnswerEntry,
  type SensorAnswerEvent,
} from './sensor-answers.ts';
export type { SensorTold } from './sensor-told.ts';
export type { SetChoice } from './set-choice.ts';
export {
  type LightKept,
  lastZeroOf,
  type SensorZero,
  type SetUpKept,
  sensorKey,
  type ZeroEntry,
  zeroSchema,
} from './set-up.ts';
export { standIn } from './stand-in.ts';
export { type StiffnessTold, stiffnessMinutes, stiffnessTold } from './stiffness.ts';
export { type TakenRecording, takenRecordings, takenSchema } from './taken-recordings.ts';
export type { TestKind } from './test-kind.ts';
export { betweenTestsS, type EarlierTest, earlierTest, restBetweenTestsS } from './test-rest.ts';
export { afterChoice, isBegun, isUntested, openTest, testsOf } from './tests-of-visit.ts';
export { asksToday, type Due, dueToday } from './today/due-today.ts';
export { earliestDay } from './today/earliest-day.ts';
export { type MorningLine, type MorningOfLeg, morningLine } from './today/morning-line.ts';
export { type RetestState, retestState } from './today/retest.ts';
export { type EpisodeLine, type FlareTold, openEpisodes, type TodayFacts } from './today/today-facts.ts';
export type { FactTold, FactToldEvent } from './told-fact.ts';
export { type VerdictLeft, verdictPlace, type WhyLeft } from './verdict-place.ts';
export type {
  AboutPerson,
  FaultMark,
  HandedAs,
  HandOver,
  InjuryTime,
  IrritabilityTold,
  LegHistory,
  SafetyAnswer,
  SafetyOverride,
  SetEnd,
  SetNote,
  Soreness,
  SoreSides,
  Visit,
  VisitHistory,
  VisitSet,
} from './visit.ts';
export {
  foldVisit,
  setOf,
  type VisitEvent,
  type VisitEventKind,
  visitEventKinds,
  visitSchema,
} from './visit-events.ts';
