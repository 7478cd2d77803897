import type { Entry } from '../../entry.ts';
import { COMPARISON_RULES } from '../comparison-rules.ts';
import type { Condition } from './condition.ts';
import type { RuleNumber } from './rule-entry.ts';
import { PRACTICE, ruleNumber } from './rule-made.ts';

/** Something that a return is held against: met, not met, or cannot be told, which counts as not met and is shown as what it is. */
export interface ReturnCriterion extends Entry {
  readonly code: string;
  readonly when: Condition;
  readonly numbers: Readonly<Record<string, RuleNumber>>;
  /** where it does not hold, the criterion is not asked for; absent: it is always asked for */
  readonly applies?: Condition;
}

function criterion(
  code: string,
  when: Condition,
  numbers: ReturnCriterion['numbers'] = {},
  applies?: Condition,
): ReturnCriterion {
  const entry = { ...PRACTICE, id: `return.${code}`, version: '1', unit: '1', code, when, numbers };
  return applies === undefined ? entry : { ...entry, applies };
}

const comparable: Condition = { fact: 'ratio-allowed', is: 'yes' };

/**
 * What is asked for before running begins. No agreed set exists: of 35 studies of a return, 19 stated any (Habets 2018 Sports Med
 * 48:705).
 */
export const START_RUNNING: readonly ReturnCriterion[] = [
  criterion('brisk-walk', { fact: 'pain-brisk-walk', atMost: 'pain' }, { pain: ruleNumber('return-walk-pain', 2) }),
  criterion('raises', { fact: 'valid-raises', atLeast: 'raises' }, { raises: ruleNumber('return-raises', 20) }),
  criterion('ten-raises', { fact: 'pain-ten-raises', atMost: 'pain' }, { pain: ruleNumber('return-ten-pain', 2) }),
  criterion('low-grade', { fact: 'irritability', is: 'low' }),
  criterion('stable', { fact: 'days-stable', atLeast: 'days' }, { days: ruleNumber('return-stable', 14, 'd') }),
  criterion(
    'hops',
    {
      all: [
        { fact: 'pain-twenty-hops', atMost: 'pain' },
        { fact: 'rise-after-hops', atMost: 'rise' },
      ],
    },
    { pain: ruleNumber('return-hop-pain', 3), rise: ruleNumber('return-hop-rise', 0) },
  ),
  criterion('ratio', { fact: 'side-ratio', atLeast: 'ratio' }, { ratio: ruleNumber('return-ratio', 0.8) }, comparable),
  criterion(
    'push',
    { fact: 'push-of-target', atLeast: 'whole' },
    { whole: ruleNumber('return-push', 1) },
    { fact: 'push-target-set', is: 'yes' },
  ),
];

/** What is asked for before somebody goes on alone. */
export const FULL_RETURN: readonly ReturnCriterion[] = [
  criterion(
    'usual-training',
    {
      all: [
        { fact: 'days-usual-training', atLeast: 'days' },
        { fact: 'worst-morning-lately', atMost: 'pain' },
      ],
    },
    { days: ruleNumber('return-usual-days', 14, 'd'), pain: ruleNumber('return-morning-pain', 1) },
  ),
  criterion('questionnaire', { fact: 'questionnaire-changed', is: 'yes' }),
  criterion('endurance', { fact: 'endurance-in-reference', is: 'yes' }),
  criterion('strength', { fact: 'strength-in-reference', is: 'yes' }),
  criterion('sides', { fact: 'side-ratio', atLeast: 'line' }, { line: COMPARISON_RULES.ratioLine }, comparable),
];

/** What is kept up after a return: heavy slow raises a week, and for how long. */
export const KEEP_UP = {
  leastPerWeek: ruleNumber('keep-up-least', 1),
  mostPerWeek: ruleNumber('keep-up-most', 2),
  months: ruleNumber('keep-up-months', 6, 'mo'),
  /** four weeks of usual training are asked for by some */
  usualDaysMost: ruleNumber('keep-up-usual-days', 28, 'd'),
} as const satisfies Readonly<Record<string, RuleNumber>>;
