import type { VisitLegs } from '@surae/analysis';
import { isBothSore } from '../around-visit.ts';
import type { Person } from '../person.ts';
import type { TestKind } from '../test-kind.ts';
import type { Visit } from '../visit.ts';
import { pairCircumstances } from './pair-circumstances.ts';
import { personFacts } from './told-facts.ts';

/** What a comparison of both legs asks for besides the legs, by either test. */
export function pairFacts(visit: Visit, person: Person, test: TestKind): Omit<VisitLegs, 'legs'> {
  const { first, restS, sameDay, sameSource, nerveSigns } = pairCircumstances(visit, test);
  // a complaint of both legs stands against a ratio on every visit that falls into it
  const blocks: VisitLegs['blocks'] = isBothSore(visit) ? ['both-sides-sore'] : [];
  return { person: personFacts(visit, person, nerveSigns), first, restS, sameDay, sameSource, blocks };
}
