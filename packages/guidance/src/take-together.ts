import type { GuidanceVariable } from '@surae/shared';
import { type GivenFacts, LEGS, type Leg } from './given-facts.ts';
import type { Blocked, Proposed, Together } from './guidance.ts';
import type { RuleTrace } from './judge-rule.ts';

/** Person fact that says which legs are sore: those govern. */
export const soreLegs = 'sore-legs';

/** The legs that govern what is done: those that are sore, and both where none is or it is not known. */
export function governingLegs(given: GivenFacts): readonly Leg[] {
  const fact = given.person[soreLegs];
  const told = fact === undefined || 'missing' in fact ? null : fact.value;
  return told === 'left' || told === 'right' ? [told] : LEGS;
}

/**
 * What holds for both legs: the most careful proposal of the legs that govern. It stands only where every one of them has a proposal
 * that stands, and none is blocked.
 *
 * @param about - the variable [-]
 * @param proposals - those of each leg [-]
 * @param blocked - what holds and is blocked [-]
 * @param given - what is known [-]
 * @returns null where no governing leg has a proposal [-]
 *
 * Source: ours; that the more irritable leg governs is common practice, no source
 */
export function takeTogether(
  about: GuidanceVariable,
  proposals: readonly Proposed[],
  blocked: readonly Blocked[],
  given: GivenFacts,
): Together | null {
  const governing = governingLegs(given);
  const own = proposals.filter((one) => one.about === about && one.leg !== null && governing.includes(one.leg));
  const [first] = own.toSorted((one, other) => one.rule.rank - other.rule.rank);
  if (first === undefined) return null;
  const isWhole =
    own.length === governing.length &&
    own.every(({ standing }) => standing === 'stands') &&
    !blocked.some(({ trace: { rule, leg } }) => rule.about === about && leg !== null && governing.includes(leg));
  const legs = own.flatMap(({ rule, leg }) => (leg !== null && rule.rank === first.rule.rank ? [leg] : []));
  return { about, rule: first.rule, legs, standing: isWhole ? 'stands' : 'waits' };
}

/**
 * What is next for both legs, where the order of the rules says what comes first and not what is more careful: the first that holds and
 * is open on every leg that governs. One leg that is ready for more than the other one leads to nothing.
 *
 * @param about - the variable [-]
 * @param asked - its rules, judged for each leg [-]
 * @param isOpen - whether nothing stands against one [-]
 * @param given - what is known [-]
 * @returns null where no rule holds on all of them; it waits where an earlier one is not ruled out [-]
 *
 * Source: ours; that the more irritable leg governs is common practice, no source
 */
export function nextTogether(
  about: GuidanceVariable,
  asked: readonly RuleTrace[],
  isOpen: (trace: RuleTrace) => boolean,
  given: GivenFacts,
): Together | null {
  const governing = governingLegs(given);
  const rules = [...new Set(asked.map(({ rule }) => rule))].sort((one, other) => one.rank - other.rank);
  let standing: Together['standing'] = 'stands';
  for (const rule of rules) {
    const own = asked.filter((one) => one.rule === rule && one.leg !== null && governing.includes(one.leg));
    if (own.length < governing.length || own.some((one) => one.held === 'no' || !isOpen(one))) continue;
    if (own.every(({ held }) => held === 'yes')) return { about, rule, legs: governing, standing };
    standing = 'waits';
  }
  return null;
}
