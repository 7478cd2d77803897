import type { Touch } from '@surae/shared';
import type { Leg } from './given-facts.ts';
import type { RuleTrace } from './judge-rule.ts';

/**
 * Blocks that stand against something: those of its leg and of the person. What keeps a leg from any load keeps the person from it, and
 * what stands against a leg stands against what is done with both.
 *
 * @param touches - what it does [-]
 * @param leg - of which leg; null for the person, or both legs [-]
 * @param blocks - those that are not ruled out [-]
 * @returns the ones against it; empty where none stands against it [-]
 *
 * Source: ours
 */
export function blocksAgainst(
  touches: readonly Touch[],
  leg: Leg | null,
  blocks: readonly RuleTrace[],
): readonly RuleTrace[] {
  return blocks.filter((block) => {
    const stopped = (block.rule.proposes.blocks ?? []).filter((one) => touches.includes(one));
    if (stopped.length === 0) return false;
    return stopped.includes('loading') || block.leg === null || leg === null || block.leg === leg;
  });
}
