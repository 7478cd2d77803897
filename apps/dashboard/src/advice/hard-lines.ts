import type { PlanItem } from '@surae/casebook';
import { EXERCISES, HEAVY_SLOW_EXERCISES } from '@surae/shared';
import { proposedByOf } from './proposed-by.ts';

/** Exercises that are heavy by what they are. */
const always: readonly string[] = ['loaded-one-leg-raise', ...HEAVY_SLOW_EXERCISES.byHand];

/** Levels of which the raises are heavy ones. */
const heavyLevels: readonly string[] = ['heavy', 'springs', 'sport'];

/** Whether an exercise is done with an impact: bounces and hops. */
export function isImpactCode(code: string | null): boolean {
  const move = EXERCISES.find((one) => one.code === code)?.move;
  return move === 'rebounds' || move === 'hops';
}

/** Whether a line of a plan is of heavy raises: with a weight, or of a level on which they are heavy. */
export function isHeavyLine({ code, load, proposedBy }: Pick<PlanItem, 'code' | 'load' | 'proposedBy'>): boolean {
  if (isImpactCode(code)) return false;
  const level = proposedByOf(proposedBy)?.level;
  return load !== null || always.some((one) => one === code) || heavyLevels.some((one) => one === level);
}
