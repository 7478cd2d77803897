import type { RuleTrace } from './judge-rule.ts';

/**
 * Blocks that stand against what a rule proposes: those of its leg and of the person. What keeps a leg from any load keeps the person
 * from it, and what stands against a leg stands against what is done with both.
 *
 * @param trace - the rule that holds [-]
 * @param blocks - those that are not ruled out [-]
 * @returns the ones against it; empty where none stands against it [-]
 *
 * Source: ours
 */
export function blocksAgainst({ rule, leg }: RuleTrace, blocks: readonly RuleTrace[]): readonly RuleTrace[] {
  const { touches } = rule.proposes;
  return blocks.filter((block) => {
    const stopped = (block.rule.proposes.blocks ?? []).filter((one) => touches.includes(one));
    if (stopped.length === 0) return false;
    return stopped.includes('loading') || block.leg === null || leg === null || block.leg === leg;
  });
}
