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

/** One fact and some of its answers. */
interface Asked {
  readonly code: string;
  readonly answers: readonly (number | string)[];
}

/** A world in which these answers to one fact decide the rule; what is not answered yet is missing. */
function decidedBy(rule: GuidanceRule, asked: Asked, world: World, left: readonly string[]): World | null {
  const each = asked.answers.map((one) => heldIn(rule, { ...world, [asked.code]: one }));
  if (!each.includes('cannot-tell')) return new Set(each).size > 1 ? fullWorld(rule, world, left) : null;
  const [next, ...rest] = left;
  if (next === undefined) return null;
  for (const one of tellingAnswers(rule, next)) {
    const found = decidedBy(rule, asked, { ...world, [next]: one }, rest);
    if (found !== null) return found;
  }
  return null;
}

/** Every fact with all of its answers, and with those about each of its numbers. */
function askedOf(rule: GuidanceRule): readonly Asked[] {
  const ofFacts = factsOf(rule.when).map((code) => ({ code, answers: tellingAnswers(rule, code) }));
  const ofNumbers = numbersOf(rule.when).map(({ fact, number }) => {
    const limit = rule.numbers[number].value;
    const near = tellingAnswers(rule, fact).filter((one) => Math.abs(Number(one) - limit) < 2e-6);
    return { code: fact, answers: near };
  });
  return [...ofFacts, ...ofNumbers];
}

function fullWorld(rule: GuidanceRule, world: World, left: readonly string[]): World {
  return { ...Object.fromEntries(left.map((code) => [code, tellingAnswers(rule, code)[0]])), ...world };
}

/**
 * Worlds that a rule can tell apart: an answer to each of its facts. All of them, or, where they are many, for each fact and each number
 * those in which it decides.
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
  const deciding = askedOf(rule).flatMap((asked) => {
    const others = codes.filter((one) => one !== asked.code);
    const found = decidedBy(rule, asked, {}, others);
    return found === null ? [] : asked.answers.map((one) => ({ ...found, [asked.code]: one }));
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
