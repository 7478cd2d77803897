import { type FactEntry, GUIDANCE_VARIABLES, type GuidanceRule, type GuidanceVariable } from '@surae/shared';
import { factsOf, numbersOf } from './judge-condition.ts';
import { factTable } from './judge-rule.ts';

/** What keeps a set of rules from being used. */
export interface RuleFault {
  readonly rule: string;
  readonly fault:
    | 'twice'
    | 'unknown-fact'
    | 'fact-of-leg'
    | 'unknown-code'
    | 'number-of-code'
    | 'unknown-number'
    | 'other-unit'
    | 'unused-number'
    | 'no-stand-in'
    | 'block-without-what'
    | 'follows-later';
  readonly name: string;
}

type Condition = GuidanceRule['when'];

function codesIn(when: Condition): readonly { readonly fact: string; readonly code: string }[] {
  if ('all' in when) return when.all.flatMap(codesIn);
  if ('any' in when) return when.any.flatMap(codesIn);
  if ('not' in when) return codesIn(when.not);
  if ('is' in when) return [{ fact: when.fact, code: when.is }];
  return 'oneOf' in when ? when.oneOf.map((code) => ({ fact: when.fact, code })) : [];
}

const variables = Object.keys(GUIDANCE_VARIABLES) as readonly GuidanceVariable[];

/**
 * Everything that is wrong with a set of rules: a name that is not there, a number against an answer that is none, a number in
 * another unit than its fact, a number that nothing uses.
 *
 * @param rules - as given, or as a clinic changed them [-]
 * @param facts - every fact there is [-]
 * @returns empty where the rules can be used [-]
 *
 * Source: ours
 */
export function ruleFaults(rules: readonly GuidanceRule[], facts: readonly FactEntry[]): readonly RuleFault[] {
  const table = factTable(facts);
  const seen = new Set<string>();
  return rules.flatMap((rule): RuleFault[] => {
    const faults: RuleFault[] = [];
    const add = (fault: RuleFault['fault'], name: string): void => void faults.push({ rule: rule.code, fault, name });
    if (seen.has(rule.code)) add('twice', rule.code);
    seen.add(rule.code);
    for (const code of factsOf(rule.when)) {
      const fact = table.get(code);
      if (fact === undefined) add('unknown-fact', code);
      else if (rule.of === 'person' && fact.of === 'leg') add('fact-of-leg', code);
    }
    for (const { fact, code } of codesIn(rule.when)) {
      const holds = table.get(fact)?.holds;
      if (holds !== undefined && !(holds.kind === 'code' && holds.codes.includes(code))) add('unknown-code', code);
    }
    const used = new Set(rule.proposes.amounts ?? []);
    for (const { fact, number } of numbersOf(rule.when)) {
      used.add(number);
      const entry = table.get(fact);
      if (entry?.holds.kind === 'code') add('number-of-code', fact);
      const held = rule.numbers[number];
      if (held !== undefined && entry !== undefined && held.unit !== entry.unit) add('other-unit', number);
    }
    for (const name of used) if (!Object.hasOwn(rule.numbers, name)) add('unknown-number', name);
    for (const name of Object.keys(rule.numbers)) if (!used.has(name)) add('unused-number', name);
    for (const fact of rule.standIns ?? []) {
      if (table.get(fact)?.standIn == null || !factsOf(rule.when).includes(fact)) add('no-stand-in', fact);
    }
    const { kind, blocks = [] } = rule.proposes;
    if ((kind === 'block') !== blocks.length > 0 || (kind === 'block') !== (rule.about === 'block')) {
      add('block-without-what', kind);
    }
    if (rule.follows !== undefined && variables.indexOf(rule.follows.about) >= variables.indexOf(rule.about)) {
      add('follows-later', rule.follows.about);
    }
    return faults;
  });
}
