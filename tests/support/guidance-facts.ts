import type { FactsOf, GivenFact, GivenFacts, KnownFact } from '@surae/guidance';
import { GUIDANCE_FACTS } from '@surae/shared';

/** An answer, told in a visit of 1 March 2026. */
export function known(value: number | string, bounds: { low?: number; high?: number } = {}): KnownFact {
  return { value, ...bounds, from: { what: 'visit', day: '2026-03-01' } };
}

type Told = Readonly<Record<string, number | string | GivenFact>>;

export function factsTold(told: Told): FactsOf {
  return Object.fromEntries(
    Object.entries(told).map(([code, one]) => [code, typeof one === 'object' ? one : known(one)]),
  );
}

/** The safety list, gone through and clear. */
export const clearList: Told = Object.fromEntries(
  GUIDANCE_FACTS.filter(({ code }) => code.startsWith('safety.')).map(({ code }) => [code, 'clear']),
);

/** Facts of a person whose list is clear and who is sore on the left leg, unless something else is said. */
export function madeFacts(left: Told, right: Told = {}, person: Told = {}): GivenFacts {
  return {
    legs: { left: factsTold(left), right: factsTold(right) },
    person: factsTold({ ...clearList, 'sore-legs': 'left', ...person }),
  };
}
