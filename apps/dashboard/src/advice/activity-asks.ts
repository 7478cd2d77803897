import { factTold, type Visit } from '@surae/casebook';
import type { GivenFacts, Leg } from '@surae/guidance';
import { ASKED_FACTS } from '@surae/shared';
import { askOf, type FactAsk } from './fact-asks.ts';

/**
 * What is asked beside what is proposed for activity: what nobody told and no log tells, and what was told in this visit, so that it can
 * be taken back. What is asked here settles a point of a list, or whether somebody is taken to run or to stand.
 *
 * @param given - what is known [unit of the fact]
 * @param visit - of today [-]
 * @param leg - null for the person [-]
 * @param facts - those that are asked at this place; all where it is left out [-]
 * @returns in their order; empty where a tap settles nothing [-]
 *
 * Source: ours
 */
export function activityAsks(
  given: GivenFacts,
  visit: Visit,
  leg: Leg | null,
  facts?: readonly string[],
): readonly FactAsk[] {
  const known = leg === null ? given.person : given.legs[leg];
  return ASKED_FACTS.filter(({ fact, of, at }) => {
    if (at !== 'activity' || (of === 'leg') !== (leg !== null) || facts?.includes(fact) === false) return false;
    const one = known[fact];
    return factTold(visit, fact, leg) !== undefined || one === undefined || 'missing' in one;
  }).map((one) => askOf(one, leg, visit));
}
