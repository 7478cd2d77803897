import type { RuleNumber } from './rule-entry.ts';
import { ruleNumber } from './rule-made.ts';

/** When mornings are said to rise over weeks: more than chance moves them, and by so much that it matters. */
export const TREND_NUMBERS = {
  /** how often the lower bound of the slope is below the true one */
  confidence: ruleNumber('trend-confidence', 0.95, '1', {
    source:
      'ours: one-sided bound from the exact distribution of the statistic of Kendall; Sen 1968 J Am Stat Assoc 63:1379',
    mark: 'computed',
  }),
  /** points of ten a week: one point in four weeks */
  rise: ruleNumber('trend-rise', 0.25),
  flat: ruleNumber('trend-flat', 0),
} as const satisfies Readonly<Record<string, RuleNumber>>;
