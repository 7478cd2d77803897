import { factsOf, type GivenFact, type GivenFacts, numbersOf } from '@surae/guidance';
import { type FactEntry, GUIDANCE_FACTS, type GuidanceRule } from '@surae/shared';
import { known } from './guidance-facts.ts';

const table = new Map(GUIDANCE_FACTS.map((one) => [one.code, one]));

/** The fact of a code. */
export function factOf(code: string): FactEntry {
  const entry = table.get(code);
  if (entry === undefined) throw new Error(`no fact ${code}`);
  return entry;
}

/** Answers that lead to every verdict about a fact: each code, or each limit of the rule with what lies just under and over it. */
export function tellingAnswers(rule: GuidanceRule, code: string): readonly (number | string)[] {
  const { holds } = factOf(code);
  if (holds.kind === 'code') return holds.codes;
  const limits = numbersOf(rule.when)
    .filter(({ fact }) => fact === code)
    .map(({ number }) => rule.numbers[number].value);
  const near = limits.flatMap((limit) => [limit - 1e-6, limit, limit + 1e-6]);
  return [...new Set(near)].filter((one) => one >= holds.least && (holds.most === null || one <= holds.most));
}

/** Every world that a rule can tell apart: an answer to each of its facts. */
export function worldsOf(rule: GuidanceRule): readonly Readonly<Record<string, number | string>>[] {
  return factsOf(rule.when).reduce<Readonly<Record<string, number | string>>[]>(
    (worlds, code) => worlds.flatMap((world) => tellingAnswers(rule, code).map((one) => ({ ...world, [code]: one }))),
    [{}],
  );
}

/** A world as it is handed to a rule: each answer where its fact belongs, the same for both legs. */
export function givenIn(world: Readonly<Record<string, number | string>>, without: readonly string[] = []): GivenFacts {
  const of = (whose: FactEntry['of']): Record<string, GivenFact> =>
    Object.fromEntries(
      Object.entries(world)
        .filter(([code]) => factOf(code).of === whose)
        .map(([code, value]) => [code, without.includes(code) ? { missing: 'not-asked' } : known(value)]),
    );
  return { legs: { left: of('leg'), right: of('leg') }, person: of('person') };
}
