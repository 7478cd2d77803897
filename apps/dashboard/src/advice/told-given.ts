import type { Side } from '@surae/analysis';
import type { Visit } from '@surae/casebook';
import type { FactsOf } from '@surae/guidance';
import { ASKED_FACTS } from '@surae/shared';
import { known } from './given-fact.ts';

/**
 * What was told in this visit of a leg, or of the person, because a proposal stands on it. An answer that this version does not know is
 * no answer.
 *
 * @param visit - of today [-]
 * @param leg - null for the person [-]
 * @returns facts by their code [unit of the fact]
 *
 * Source: ours
 */
export function toldGiven({ factsTold = [], id }: Pick<Visit, 'factsTold' | 'id'>, leg: Side | null): FactsOf {
  return Object.fromEntries(
    ASKED_FACTS.flatMap(({ fact, answers }) => {
      const told = factsTold.find((one) => one.fact === fact && one.leg === leg);
      const answer = answers.find(({ code }) => code === told?.answer);
      if (told === undefined || answer === undefined) return [];
      return [[fact, known(answer.value, 'told', { day: told.at, visitId: id })] as const];
    }),
  );
}

/** Facts with what was told in place of those that are missing: what was measured or logged stands. */
export function withTold(facts: FactsOf, told: FactsOf): FactsOf {
  const open = Object.entries(told).filter(([fact]) => {
    const before = facts[fact];
    return before === undefined || 'missing' in before;
  });
  return { ...facts, ...Object.fromEntries(open) };
}
