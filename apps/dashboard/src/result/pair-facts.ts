import type { VisitLegs } from '@surae/analysis';
import type { Person, TestKind, Visit } from '@surae/casebook';
import { pairCircumstances } from './pair-circumstances.ts';
import { personFacts } from './told-facts.ts';

/** What a comparison of both legs asks for besides the legs, by either test. */
export function pairFacts(visit: Visit, person: Person, test: TestKind): Omit<VisitLegs, 'legs'> {
  const { first, restS, sameDay, sameSource, nerveSigns } = pairCircumstances(visit, test);
  return { person: personFacts(visit, person, nerveSigns), first, restS, sameDay, sameSource, blocks: [] };
}
