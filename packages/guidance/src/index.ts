export { answerOf } from './answer-of.ts';
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
