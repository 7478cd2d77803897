import type { RuleNumber } from './rule-entry.ts';
import { ruleNumber } from './rule-made.ts';

/** What sessions and mornings have to hold before a person's own threshold is looked for. */
export const FLARE_NUMBERS = {
  weeks: ruleNumber('flare-weeks', 6, '1'),
  flares: ruleNumber('flare-flares', 5, '1'),
  /** sessions with a steady morning after them */
  steady: ruleNumber('flare-steady', 10, '1'),
  /** share of sessions without a morning after them, at most */
  unknownMost: ruleNumber('flare-unknown', 0.3, '1'),
  /** how often the interval is to hold the truth */
  confidence: {
    ...ruleNumber('flare-confidence', 0.95, '1'),
    source: 'ours: profile likelihood, Venzon & Moolgavkar 1988 Appl Stat 37:87',
    mark: 'computed',
  },
} as const satisfies Readonly<Record<string, RuleNumber>>;
