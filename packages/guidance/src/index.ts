export { answerOf } from './answer-of.ts';
export {
  boundOf,
  type ClinicRules,
  clinicRules,
  type OwnNumber,
  type OwnNumberFault,
  ownNumberFault,
} from './clinic-rules.ts';
export { courseFacts } from './course/course-facts.ts';
export { type DaysSteady, daysSteady } from './course/days-steady.ts';
export type { LegCourse, MorningTold, SessionTold } from './course/leg-course.ts';
export { type RunLoad, runLoad } from './course/run-load.ts';
export { type RungHeld, type RungTried, rungHeld } from './course/rung-held.ts';
export { leastSlope, theilSenSlope } from './course/slope.ts';
export { type DoseSum, doseSum } from './dose/dose-sum.ts';
export { exerciseTouches, type LineHeldBack, linesFor } from './dose/line-touches.ts';
export { type LoadStart, loadStart } from './dose/load-start.ts';
export { editedRule, type NumberChange } from './edited-rule.ts';
export {
  type FactsOf,
  type From,
  type GivenFact,
  type GivenFacts,
  type KnownFact,
  LEGS,
  type Leg,
  type MissingFact,
} from './given-facts.ts';
export type { Blocked, Guidance, Proposed, Standing, Together } from './guidance.ts';
export { GuidanceError, type GuidanceErrorCode } from './guidance-error.ts';
export { factsOf, type Judged, judgeCondition, numbersOf } from './judge-condition.ts';
export { type FactTable, type FactUsed, factTable, judgeRule, type RuleTrace, type TreatedAs } from './judge-rule.ts';
export { type DoseAsked, doseOf, type LegDose, secondsOfOne, type WithheldDose } from './load/dose-of.ts';
export {
  type FlareGround,
  type FlareThreshold,
  flareThreshold,
  type NoThreshold,
  type SessionAndMorning,
} from './load/flare-threshold.ts';
export {
  type DayLoad,
  type LegDay,
  type LegDayDone,
  type LegDayPlanned,
  loadByDay,
  type PlannedDay,
} from './load/load-by-day.ts';
export { type LoadViews, loadViews, type Stride, type StrideMissing } from './load/load-views.ts';
export { type MatchedPain, matchedPain, type PainAtLoads, type PainTold, type Unmatched } from './load/matched-pain.ts';
export { type DoneEntry, type LineBeside, type PlannedLine, plannedAndDone } from './load/planned-and-done.ts';
export { type LoadRange, type RelativeRange, relativeOf, relativeTo } from './load/relative-load.ts';
export { type NumbersInUse, numbersInUse, painLimitOf } from './numbers-in-use.ts';
export { propose } from './propose.ts';
export { type RuleFault, ruleFaults } from './rule-faults.ts';
export { type HardDaysFit, hardDaysInWeek } from './running/hard-days-week.ts';
export { type CriteriaTrace, type CriterionTrace, criteriaFact, judgeCriteria } from './running/judge-criteria.ts';
export { bandOf, type LoadStory, loadStory, type RunJump, type WeekRun } from './running/load-story.ts';
export { type NextRun, nextRun, type RunReturn } from './running/next-run.ts';
export { type RaceAsked, type RaceReach, raceReach } from './running/race-day.ts';
export type { DaySpan, RunDone, RunLog } from './running/run-log.ts';
export { type OneAtATime, oneAtATime, type RunEffort, type RunWalk, runWalk } from './running/run-plan.ts';
export { type Cap, type CapSettledBy, type SessionCap, sessionCap } from './running/session-cap.ts';
export { blocksAgainst } from './standing-blocks.ts';
export { governingLegs } from './take-together.ts';
export { allHold, anyHolds, doesNotHold, type Held } from './verdict.ts';
export { weakestMark } from './weakest-mark.ts';
