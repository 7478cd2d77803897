import { FIXED_NUMBERS, type FixedWhy, type GuidanceRule, type NumberBound, RULE_NUMBER_BOUNDS } from '@surae/shared';
import { editedRule } from './edited-rule.ts';

/** A number as a clinic has it in its own copy of the rules. */
export interface OwnNumber {
  /** id of the number; it is changed in every rule that holds it */
  readonly number: string;
  /** UCUM code */
  readonly unit: string;
  /** what the published rules said when it was changed [unit] */
  readonly published: number;
  /** [unit] */
  readonly value: number;
  readonly reason: string;
  /** who changed it, by a code of the clinic */
  readonly by: string;
  /** by the calendar of the place */
  readonly day: string;
}

/** Why a number of a clinic cannot be used. */
export type OwnNumberFault =
  | 'unknown-number'
  | 'other-unit'
  /** the published number is another one by now: somebody looks at it anew */
  | 'other-published'
  | 'out-of-bounds'
  | 'off-step'
  | FixedWhy;

/** The rules as a clinic has them. */
export interface ClinicRules {
  readonly rules: readonly GuidanceRule[];
  /** numbers that are kept and not used: the published ones stand in their place */
  readonly notUsed: readonly { readonly own: OwnNumber; readonly why: OwnNumberFault }[];
}

/** Between which bounds a number may be changed, or why it may not; null for one that no rule holds. */
export function boundOf(id: string): NumberBound | FixedWhy | null {
  return FIXED_NUMBERS.get(id) ?? RULE_NUMBER_BOUNDS.find(({ number }) => number === id) ?? null;
}

/**
 * What stands against a number of a clinic.
 *
 * @param own - see {@link OwnNumber} [its unit]
 * @param rules - as they are published [-]
 * @returns null where it can be used [-]
 *
 * Source: ours
 */
export function ownNumberFault(
  own: Pick<OwnNumber, 'number' | 'unit' | 'published' | 'value'>,
  rules: readonly GuidanceRule[],
): OwnNumberFault | null {
  const { number, unit, published, value } = own;
  const held = rules.flatMap((rule) => Object.values(rule.numbers)).find(({ id }) => id === number);
  const bound = boundOf(number);
  if (held === undefined || bound === null) return 'unknown-number';
  if (typeof bound === 'string') return bound;
  if (unit !== held.unit) return 'other-unit';
  if (published !== held.value) return 'other-published';
  if (!(value >= bound.least && value <= bound.most)) return 'out-of-bounds';
  const steps = (value - bound.least) / bound.by;
  return Math.abs(steps - Math.round(steps)) > 1e-9 ? 'off-step' : null;
}

function withOwn(rule: GuidanceRule, own: OwnNumber): GuidanceRule {
  const names = Object.keys(rule.numbers).filter((name) => rule.numbers[name]?.id === own.number);
  const { value, by, day, reason } = own;
  return names.reduce((changed, number) => editedRule(changed, { number, value, by, day, reason }), rule);
}

/**
 * The rules as a clinic has them: each of its numbers in every rule that holds it, so that levels that follow on each other stay
 * without a gap. What cannot be used is told, and the published number stands.
 *
 * @param published - as they are given [-]
 * @param own - numbers of the clinic, of one id the last one [-]
 * @returns rules in their order; one that nobody changed is the same object [-]
 *
 * Source: ours
 */
export function clinicRules(published: readonly GuidanceRule[], own: readonly OwnNumber[]): ClinicRules {
  const last = [...new Map(own.map((one) => [one.number, one])).values()];
  const looked = last.map((one) => ({ own: one, why: ownNumberFault(one, published) }));
  const used = looked.filter(({ own: { value, published: was }, why }) => why === null && value !== was);
  return {
    rules: published.map((rule) => used.reduce((changed, one) => withOwn(changed, one.own), rule)),
    notUsed: looked.flatMap(({ own: one, why }) => (why === null ? [] : [{ own: one, why }])),
  };
}
