import type { PlanRuleCode } from '@surae/shared';
import type { Entry } from '../entry.ts';
import type { PlanItem } from '../kinds/person-kinds.ts';
import type { Visit } from '../visit.ts';
import { isTickedLock, planFacts, planOpenBlocks } from './plan-gate.ts';

/** A line of a plan that nobody is to follow for now, with the rules that stand against it. */
export interface HeldLine {
  readonly item: Entry<PlanItem>;
  readonly rules: readonly PlanRuleCode[];
}

/**
 * Parts the lines of an earlier plan by what a later visit found: a line of the safety list that was ticked since, a raise that was
 * lost suddenly, or a heel bone that has become sore. The lines stay in the record; a later visit without these lets them go on.
 *
 * @param items - lines that were kept before [-]
 * @param visit - what the later visit found; a safety list that was not gone through in it takes nothing back [-]
 * @returns lines that go on, and those that are held back [-]
 * Source: ours; each rule has its own source in the shared data
 */
export function heldBack(
  items: readonly Entry<PlanItem>[],
  visit: Pick<Visit, 'sore' | 'safety' | 'ladder'>,
): { readonly items: readonly Entry<PlanItem>[]; readonly held: readonly HeldLine[] } {
  const { safety } = visit;
  // what was ticked holds back; that the list has new lines since does not
  const safetyLocked = safety !== null && (!safety.seenWhole || isTickedLock(safety));
  // not one raise asks for the signs of a rupture before something new is planned; it takes nothing back
  const facts = { ...planFacts({ ...visit, sets: [] }), safetyLocked };
  const looked = items.map((item) => ({ item, rules: planOpenBlocks(item.body, facts) }));
  return {
    items: looked.filter(({ rules }) => rules.length === 0).map(({ item }) => item),
    held: looked.filter(({ rules }) => rules.length > 0),
  };
}
