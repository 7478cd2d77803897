import type { RuleNumber } from './rule-entry.ts';
import { type Basis, ruleNumber } from './rule-made.ts';

const basis: Basis = {
  source:
    'Silbernagel & Crossley 2015 J Orthop Sports Phys Ther 45:876, table of recovery days; from memory. There effort counts too; a run is logged with its pain alone',
  mark: 'from-memory',
};

/** Worst pain in a run or in jumps, of 10, from which on its load on the tendon is graded as more than light, and as high. */
export const RUN_LOADS = {
  medium: ruleNumber('run-load-medium', 2, '1', basis),
  high: ruleNumber('run-load-high', 4, '1', basis),
} as const satisfies Readonly<Record<string, RuleNumber>>;
