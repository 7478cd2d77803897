import type { GuidanceRule } from '@surae/shared';

/** What a load rule comes to for a count of raises and a body mass. */
export interface LoadStart {
  /** in a set; null where the rule says none */
  readonly repetitions: readonly [least: number, most: number] | null;
  readonly sets: number | null;
  /** beside the body [kg]; null is none, or not known without a body mass */
  readonly addedKg: number | null;
}

/**
 * What a load rule comes to.
 *
 * @param rule - a rule about load that holds [-]
 * @param raises - single-leg raises that counted [1]
 * @param bodyMassKg - null where it is not known [kg]
 * @returns repetitions, sets and load to begin with [1, kg]
 *
 * Source: ours; the numbers are those of the rule
 */
export function loadStart(rule: GuidanceRule, raises: number, bodyMassKg: number | null): LoadStart {
  const number = (name: string): number | null => rule.numbers[name]?.value ?? null;
  const [fewer, repetitions, percent, least, upTo] = ['fewer', 'repetitions', 'percent', 'least', 'upTo'].map(number);
  const inSet = fewer != null ? raises - fewer : repetitions;
  const span = least != null && upTo != null ? ([least, upTo] as const) : null;
  return {
    repetitions: span ?? (inSet == null ? null : [inSet, inSet]),
    sets: number('sets'),
    addedKg: percent == null || bodyMassKg === null ? null : (percent / 100) * bodyMassKg,
  };
}
