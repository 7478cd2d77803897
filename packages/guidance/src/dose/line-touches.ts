import { type DoseLine, EXERCISES, type Touch } from '@surae/shared';
import type { Leg } from '../given-facts.ts';
import type { RuleTrace } from '../judge-rule.ts';
import { blocksAgainst } from '../standing-blocks.ts';

/** What an exercise of a plan does, as far as rules can stand against it; one that is not known is taken to do all of it. */
export function exerciseTouches(code: string): readonly Touch[] {
  const exercise = EXERCISES.find((one) => one.code === code);
  if (exercise === undefined) return ['loading', 'hard-hold', 'step', 'stretch', 'below-level', 'impact'];
  const touches: Touch[] = ['loading'];
  if (exercise.move === 'hold') touches.push('hard-hold');
  if (exercise.move === 'rebounds' || exercise.move === 'hops') touches.push('impact');
  if (exercise.presses === 'step') touches.push('step');
  if (exercise.presses === 'stretch') touches.push('stretch');
  if (exercise.beginDeg < 0) touches.push('below-level');
  return touches;
}

/** A line that something stands against. */
export interface LineHeldBack {
  readonly line: DoseLine;
  readonly by: readonly RuleTrace[];
}

/**
 * Parts the lines of a level or a programme by what stands against them.
 *
 * @param lines - of a level or a programme that is proposed [-]
 * @param leg - for which leg; null for both [-]
 * @param blocks - those of the guidance [-]
 * @returns lines that can be offered, and those that are held back with everything against them [-]
 *
 * Source: ours
 */
export function linesFor(
  lines: readonly DoseLine[],
  leg: Leg | null,
  blocks: readonly RuleTrace[],
): { readonly lines: readonly DoseLine[]; readonly heldBack: readonly LineHeldBack[] } {
  const looked = lines.map((line) => ({ line, by: blocksAgainst(exerciseTouches(line.exercise), leg, blocks) }));
  return {
    lines: looked.filter(({ by }) => by.length === 0).map(({ line }) => line),
    heldBack: looked.filter(({ by }) => by.length > 0),
  };
}
