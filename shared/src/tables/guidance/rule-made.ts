import type { EvidenceMark } from '../../entry.ts';
import type { GuidanceRule, RuleNumber } from './rule-entry.ts';

/** Where a rule or a number is from. */
export interface Basis {
  readonly source: string;
  readonly mark: EvidenceMark;
}

/** Common practice. */
export const PRACTICE: Basis = { source: 'common practice, no source', mark: 'common-practice' };

/** A number of a rule. */
export function ruleNumber(id: string, value: number, unit = '1', basis: Basis = PRACTICE): RuleNumber {
  return { id: `guidance.${id}`, version: '1', unit, value, source: basis.source, mark: basis.mark };
}

type Made = Pick<GuidanceRule, 'code' | 'about' | 'when' | 'proposes'> & Partial<GuidanceRule>;

/** A rule about a leg, of common practice and of rank 0, with sentences of its own code, unless something else is said. */
export function guidanceRule(made: Made): GuidanceRule {
  const { code } = made;
  return {
    id: `guidance.${code}`,
    version: '1',
    unit: '1',
    ...PRACTICE,
    rank: 0,
    of: 'leg',
    numbers: {},
    sentence: code,
    changedBy: code,
    ...made,
  };
}
