export { answerOf } from './answer-of.ts';
export { courseFacts } from './course/course-facts.ts';
export type { LegCourse, MorningTold, SessionTold } from './course/leg-course.ts';
export { type RungHeld, type RungTried, rungHeld } from './course/rung-held.ts';
export { theilSenSlope } from './course/slope.ts';
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
export { propose } from './propose.ts';
export { type RuleFault, ruleFaults } from './rule-faults.ts';
export { governingLegs } from './take-together.ts';
export { allHold, anyHolds, doesNotHold, type Held } from './verdict.ts';
export { weakestMark } from './weakest-mark.ts';
