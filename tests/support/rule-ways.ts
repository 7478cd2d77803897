import { factTable } from '@surae/guidance';
import { type Condition, GUIDANCE_FACTS, type GuidanceRule } from '@surae/shared';

/** Every fact that a rule may ask about. */
export const factEntries = factTable(GUIDANCE_FACTS);

const step = 0.5;

export type Told = Readonly<Record<string, number | string>>;

/** Answers that make one test on one fact hold, or not hold. */
function answersTo(
  one: Exclude<Condition, { all: unknown } | { any: unknown } | { not: unknown }>,
  rule: Pick<GuidanceRule, 'numbers'>,
  is: boolean,
) {
  const { holds } = factEntries.get(one.fact)!;
  if (holds.kind === 'code') {
    const asked: readonly string[] = 'is' in one ? [one.is] : 'oneOf' in one ? one.oneOf : [];
    return holds.codes.filter((code) => asked.includes(code) === is);
  }
  const name =
    'atLeast' in one
      ? one.atLeast
      : 'atMost' in one
        ? one.atMost
        : 'above' in one
          ? one.above
          : 'below' in one
            ? one.below
            : '';
  const limit = rule.numbers[name].value;
  const isSo = (value: number): boolean =>
    'atLeast' in one
      ? value >= limit
      : 'atMost' in one
        ? value <= limit
        : 'above' in one
          ? value > limit
          : value < limit;
  const limits = Object.values(rule.numbers).flatMap(({ value }) => [value, value + step, value - step]);
  return [...new Set([limit, ...limits])].filter(
    (value) => value >= holds.least && value <= (holds.most ?? value) && isSo(value) === is,
  );
}

/** So many of a list, from all over it. */
export function spread<One>(all: readonly One[], most: number): readonly One[] {
  if (all.length <= most) return all;
  // steps of a prime, so that no part of a product is always met with the same other part
  return Array.from({ length: most }, (_, i) => all[(i * 7919) % all.length]);
}

/** Every set of answers, of a few at each place, that makes a condition hold, or not. */
export function waysOf(condition: Condition, rule: Pick<GuidanceRule, 'numbers'>, is = true): readonly Told[] {
  if ('not' in condition) return waysOf(condition.not, rule, !is);
  if ('all' in condition || 'any' in condition) {
    const parts = 'all' in condition ? condition.all : condition.any;
    const isEach = 'all' in condition === is;
    const ways = parts.map((one) => waysOf(one, rule, is));
    if (!isEach) return ways.flat();
    return ways.reduce<readonly Told[]>(
      (found, next) => {
        // of thousands few are taken: only those are put together
        const both = found.flatMap((told) =>
          next.filter((more) => agrees(told, more)).map((more) => [told, more] as const),
        );
        return spread(both, 400).map(([told, more]) => ({ ...told, ...more }));
      },
      [{}],
    );
  }
  return answersTo(condition, rule, is).map((value) => ({ [condition.fact]: value }));
}

function agrees(told: Told, more: Told): boolean {
  for (const fact in more) if (Object.hasOwn(told, fact) && told[fact] !== more[fact]) return false;
  return true;
}

/** Answers to facts of a rule that are not told yet, drawn from those at, under and over its numbers: always the same ones. */
export function filledUp(told: Told, rule: GuidanceRule, facts: readonly string[], draw: number): Told {
  let state = (draw * 2_654_435_761) % 2 ** 32;
  const rest = facts.flatMap((fact) => {
    if (Object.hasOwn(told, fact)) return [];
    const { holds } = factEntries.get(fact)!;
    const answers: readonly (number | string)[] =
      holds.kind === 'code'
        ? holds.codes
        : Object.values(rule.numbers)
            .flatMap(({ value }) => [value - step, value, value + step])
            .filter((value) => value >= holds.least && value <= (holds.most ?? value));
    // a linear congruence, Numerical Recipes
    state = (1_664_525 * state + 1_013_904_223) % 2 ** 32;
    return answers.length === 0 ? [] : [[fact, answers[Math.floor((state / 2 ** 32) * answers.length)]] as const];
  });
  return { ...told, ...Object.fromEntries(rest) };
}
