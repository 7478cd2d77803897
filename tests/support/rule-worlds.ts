import { factsOf, factTable, type GivenFact, type GivenFacts, type Held, judgeRule, numbersOf } from '@surae/guidance';
import { type FactEntry, GUIDANCE_FACTS, type GuidanceRule } from '@surae/shared';
import { known } from './guidance-facts.ts';

const facts = factTable(GUIDANCE_FACTS);

/** The fact of a code. */
export function factOf(code: string): FactEntry {
  const entry = facts.get(code);
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

type World = Readonly<Record<string, number | string>>;

/** Worlds of a rule up to which every one is looked at. */
const worldsMost = 400;

function heldIn(rule: GuidanceRule, world: World): Held {
  const asked = { ...rule, standIns: [] };
  return judgeRule(asked, rule.of === 'leg' ? 'left' : null, givenIn(world), facts).held;
}

/** A world in which the answer to one fact decides the rule; what is not answered yet is missing, and what is decided is left. */
function decidedBy(rule: GuidanceRule, code: string, world: World, left: readonly string[]): World | null {
  const each = tellingAnswers(rule, code).map((one) => heldIn(rule, { ...world, [code]: one }));
  if (!each.includes('cannot-tell')) return new Set(each).size > 1 ? fullWorld(rule, world, left) : null;
  const [next, ...rest] = left;
  if (next === undefined) return null;
  for (const one of tellingAnswers(rule, next)) {
    const found = decidedBy(rule, code, { ...world, [next]: one }, rest);
    if (found !== null) return found;
  }
  return null;
}

function fullWorld(rule: GuidanceRule, world: World, left: readonly string[]): World {
  return { ...Object.fromEntries(left.map((code) => [code, tellingAnswers(rule, code)[0]])), ...world };
}

/**
 * Worlds that a rule can tell apart: an answer to each of its facts. All of them, or, where they are many, for each fact those in
 * which it decides, and each of these with one more answer changed.
 */
export function worldsOf(rule: GuidanceRule): readonly World[] {
  const codes = factsOf(rule.when);
  const count = codes.reduce((product, code) => product * tellingAnswers(rule, code).length, 1);
  if (count <= worldsMost) {
    return codes.reduce<World[]>(
      (worlds, code) => worlds.flatMap((world) => tellingAnswers(rule, code).map((one) => ({ ...world, [code]: one }))),
      [{}],
    );
  }
  const deciding = codes.flatMap((code) => {
    const found = decidedBy(
      rule,
      code,
      {},
      codes.filter((one) => one !== code),
    );
    return found === null ? [] : tellingAnswers(rule, code).map((one) => ({ ...found, [code]: one }));
  });
  return [...new Map(deciding.map((one) => [JSON.stringify(one), one])).values()];
}

/** A world as it is handed to a rule: each answer where its fact belongs, the same for both legs. */
export function givenIn(world: World, without: readonly string[] = []): GivenFacts {
  const of = (whose: FactEntry['of']): Record<string, GivenFact> =>
    Object.fromEntries(
      Object.entries(world)
        .filter(([code]) => factOf(code).of === whose)
        .map(([code, value]) => [code, without.includes(code) ? { missing: 'not-asked' } : known(value)]),
    );
  return { legs: { left: of('leg'), right: of('leg') }, person: of('person') };
}
