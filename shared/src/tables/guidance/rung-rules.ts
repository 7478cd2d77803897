import type { GuidanceRule } from './rule-entry.ts';
import { guidanceRule } from './rule-made.ts';
import { TOLERANCE_RUNGS } from './tolerance-rungs.ts';

/** From the rung that a leg holds to the next one; a step is left out for a heel that is sore at the bone, or not known. */
export const RUNG_RULES: readonly GuidanceRule[] = TOLERANCE_RUNGS.slice(1).flatMap((next, i): GuidanceRule[] => {
  const held = TOLERANCE_RUNGS[i];
  const after = TOLERANCE_RUNGS[i + 2];
  const { source, mark } = next;
  const made = (code: string, from: string, to: typeof next, rank: number): GuidanceRule =>
    guidanceRule({
      code: `rung-${code}`,
      about: 'rung',
      rank,
      source,
      mark,
      when: { fact: 'rung-held', is: from },
      proposes: { kind: 'rung', code: to.code, touches: [...to.touches, 'increase'] },
      sentence: `rung-${to.code}`,
      changedBy: 'rung',
    });
  const one = made(next.code, held.code, next, 2 * i);
  return next.touches.includes('step') ? [one, made(`${after.code}-past-step`, held.code, after, 2 * i + 1)] : [one];
});
