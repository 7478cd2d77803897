import type { RuleNumber } from './rule-entry.ts';
import { type Basis, ruleNumber } from './rule-made.ts';

const longest: Basis = {
  source:
    'Frandsen 2025 Br J Sports Med 59:1203 (5205 runners; a run more than 10 % longer than the longest of 30 days); an association, taken as a limit',
  mark: 'read',
};

/** Numbers of a run plan. */
export const RUNNING_NUMBERS = {
  /** share by which one session may be longer than the longest of the days before */
  growth: ruleNumber('run-growth', 0.1, '1', longest),
  window: ruleNumber('run-window', 30, 'd', longest),
  /** what a cap is at least, so that small numbers may grow */
  floorS: ruleNumber('run-floor-time', 300, 's'),
  floorM: ruleNumber('run-floor-way', 1000, 'm'),
  /** the first session, whatever was run before: running in all, in parts with walking between them */
  firstS: ruleNumber('run-first-total', 300, 's'),
  parts: ruleNumber('run-parts', 5),
  walkLeastS: ruleNumber('run-walk-least', 60, 's'),
  walkMostS: ruleNumber('run-walk-most', 120, 's'),
  /** days without a run between two */
  daysBetween: ruleNumber('run-days-between', 1, 'd'),
  /** days since the last run, more than which it is begun again */
  gap: ruleNumber('run-gap', 14, 'd'),
  /** share of runs after which the same is run once more, where a race is looked at: pain or a morning was over, or not told */
  repeats: ruleNumber('run-repeats', 0.5),
  /** days looked at for what jumped, before a complaint began */
  story: ruleNumber('run-story', 84, 'd'),
} as const satisfies Readonly<Record<string, RuleNumber>>;

export type RunningNumbers = Readonly<Record<keyof typeof RUNNING_NUMBERS, RuleNumber>>;
