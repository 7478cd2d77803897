import type { GuidanceRule } from '@surae/shared';
import { GuidanceError } from './guidance-error.ts';

/** What a clinic changes in its own copy of a rule. */
export interface NumberChange {
  readonly number: string;
  readonly value: number;
  /** who changes it, by a code of the clinic */
  readonly by: string;
  /** by the calendar of the place */
  readonly day: string;
  /** why, in words of the clinic */
  readonly reason?: string;
}

/**
 * A rule with one of its numbers changed. The rule tells of it, with what stood there before, and its version names the day; the rule
 * handed in stays as it is.
 *
 * @param rule - as it is given, or already changed [-]
 * @param change - see {@link NumberChange} [unit of the number]
 * @returns the copy [-]
 * @throws {@link GuidanceError} `unknown-number` for a name that the rule does not have, `not-an-answer` for a number that is none
 *
 * Source: ours
 */
export function editedRule(rule: GuidanceRule, change: NumberChange): GuidanceRule {
  const { number, value, by, day, reason } = change;
  const before = Object.hasOwn(rule.numbers, number) ? rule.numbers[number] : undefined;
  if (before === undefined) throw new GuidanceError('unknown-number', { number, rule: rule.id });
  if (!Number.isFinite(value)) throw new GuidanceError('not-an-answer', { number, value });
  const source = `chosen by the clinic (${by}, ${day}); before: ${before.source}`;
  const changed = { ...before, value, source, mark: 'common-practice' } as const;
  return {
    ...rule,
    version: `${rule.version.replace(/\+.*$/, '')}+${day}`,
    numbers: { ...rule.numbers, [number]: changed },
    edits: [...(rule.edits ?? []), { number, by, day, was: before.value, ...(reason === undefined ? {} : { reason }) }],
  };
}
