import type { Side } from '@surae/analysis';
import {
  EXERCISES,
  INSERTION_LOWEST,
  PLAN_OPEN_LINES,
  PLAN_RULES,
  type PlanRuleCode,
  SAFETY_LIST_VERSION,
} from '@surae/shared';
import { isRuptureSuspected } from '../facts-told.ts';
import type { PlanItem } from '../kinds/person-kinds.ts';
import { isRuptureFirst } from '../raises-counted.ts';
import { isometricLocksOf, locksOf, safetyLines } from '../safety-gate.ts';
import type { SafetyAnswer, SoreSides, Visit } from '../visit.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** What is known in a visit when its plan is written. */
export interface PlanFacts {
  readonly sore: SoreSides;
  /** no loading may be planned: a line of the safety list keeps from it, or the list was not gone through */
  readonly safetyLocked: boolean;
  readonly isometricLocked: boolean;
  /** a raise was lost newly and suddenly */
  readonly suddenLoss: boolean;
  /** not one raise counted, and signs of a rupture were not looked for on that leg, or not found to be none */
  readonly ruptureFirst: boolean;
}

/** What may stand in a plan, as far as rules look at it. */
export type PlanLine = Pick<PlanItem, 'of' | 'code' | 'side' | 'lowestFootDeg' | 'run' | 'goneOver'>;

function isLocked(safety: SafetyAnswer | null): boolean {
  if (safety === null || !safety.seenWhole || safety.listVersion !== SAFETY_LIST_VERSION) return true;
  return isTickedLock(safety);
}

/**
 * Whether a line was ticked that keeps from a plan, on whichever version of the list: those that keep from a test, but for those
 * that ask for a lighter beginning, and every line that is not known.
 */
export function isTickedLock(safety: SafetyAnswer): boolean {
  const known = new Set(safetyLines.map(({ id }) => id));
  if (safety.ticked.some((id) => !known.has(id))) return true;
  return locksOf(safety).some(({ id }) => !PLAN_OPEN_LINES.some(({ line }) => line === id));
}

/**
 * What is known of a visit for its plan. The answer to the safety list is that of the visit, on whatever day the plan is written. A
 * simulated set says something of an invented person of the demo alone.
 */
export function planFacts(
  { sore, safety, ladder, factsTold = [], sets }: Pick<Visit, 'sore' | 'safety' | 'ladder' | 'factsTold' | 'sets'>,
  isInvented = false,
): PlanFacts {
  return {
    sore,
    safetyLocked: isLocked(safety) || isRuptureSuspected({ factsTold }),
    isometricLocked: safety !== null && isometricLocksOf(safety).length > 0,
    suddenLoss: sides.some((side) => ladder !== undefined && ladder[side].sudden === true),
    ruptureFirst: sides.some((side) => isRuptureFirst({ sets, factsTold }, side, isInvented)),
  };
}

/** Whether a line of a plan is for a leg whose tendon is sore at the heel bone, alone or with its middle. */
export function isForInsertion(side: PlanItem['side'], sore: SoreSides): boolean {
  const asked = side === 'both' ? sides : [side];
  return asked.some((one) => sore[one] === 'insertion' || sore[one] === 'both-places');
}

/** Whether a line loads a tendon: every exercise does, and every limit for runs that allows one. */
export function isLoading({ of, run }: Pick<PlanItem, 'of' | 'run'>): boolean {
  return of === 'exercise' || (of === 'running' && ((run?.mostS ?? 0) > 0 || (run?.mostM ?? 0) > 0));
}

/** Lowest foot angle that is offered for an exercise: level for a tendon that is sore at the heel bone [deg]. */
export function lowestOffered(code: string, side: PlanItem['side'], sore: SoreSides): number {
  const lowest = EXERCISES.find((one) => one.code === code)?.lowestDeg ?? INSERTION_LOWEST.value;
  return isForInsertion(side, sore) ? Math.max(lowest, INSERTION_LOWEST.value) : lowest;
}

/**
 * Rules that stand against a line of a plan, in the order in which they are told; empty where none does.
 *
 * @param line - what is to be kept [-]
 * @param facts - what is known in the visit [-]
 * @returns codes of the rules [-]
 * Source: ours; each rule has its own source in the shared data
 */
export function planBlocks(
  { of, code, side, lowestFootDeg, run }: PlanLine,
  facts: PlanFacts,
): readonly PlanRuleCode[] {
  const rules: PlanRuleCode[] = [];
  if (isLoading({ of, run })) {
    if (facts.safetyLocked) rules.push('safety-lock');
    if (facts.suddenLoss) rules.push('sudden-loss');
    if (facts.ruptureFirst) rules.push('rupture-first');
  }
  if (of !== 'exercise') return rules;
  const exercise = EXERCISES.find((one) => one.code === code);
  if (facts.isometricLocked && exercise?.move === 'hold') rules.push('isometric-lock');
  if (!isForInsertion(side, facts.sore)) return rules;
  if (exercise?.presses === 'step') rules.push('insertion-step');
  if (exercise?.presses === 'stretch') rules.push('insertion-stretch');
  if (lowestFootDeg !== null && lowestFootDeg < INSERTION_LOWEST.value) rules.push('insertion-range');
  return rules;
}

/** Rules against a line that were not gone over with a reason: it may be kept only where there is none. */
export function planOpenBlocks(line: PlanLine, facts: PlanFacts): readonly PlanRuleCode[] {
  const reasoned = new Set(line.goneOver.filter(({ reason }) => reason.trim() !== '').map(({ rule }) => rule));
  return planBlocks(line, facts).filter((rule) => PLAN_RULES[rule].override === 'never' || !reasoned.has(rule));
}
