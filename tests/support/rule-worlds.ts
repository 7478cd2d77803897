import { factsOf, factTable, type GivenFact, type GivenFacts, judgeRule, numbersOf } from '@surae/guidance';
import { type Condition, type FactEntry, GUIDANCE_FACTS, type GuidanceRule } from '@surae/shared';
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

/** What is left of a condition in a world: decided, or what of it still hangs on facts that are missing there. */
function leftOf(rule: GuidanceRule, when: Condition, world: World): boolean | Condition {
  if ('not' in when) {
    const inner = leftOf(rule, when.not, world);
    return typeof inner === 'boolean' ? !inner : { not: inner };
  }
  if ('all' in when || 'any' in when) {
    const isAll = 'all' in when;
    const parts = (isAll ? when.all : when.any).map((one) => leftOf(rule, one, world));
    if (parts.includes(!isAll)) return !isAll;
    const open = parts.filter((one) => typeof one !== 'boolean');
    if (open.length === 0) return isAll;
    return isAll ? { all: open } : { any: open };
  }
  if (!Object.hasOwn(world, when.fact)) return when;
  const leg = rule.of === 'leg' ? 'left' : null;
  return judgeRule({ ...rule, when, standIns: [] }, leg, givenIn(world), facts).held === 'yes';
}

/** One fact and some of its answers. */
interface Asked {
  readonly code: string;
  readonly answers: readonly (number | string)[];
}

/**
 * A world in which these answers to one fact decide the rule; what is not answered yet is missing. A world in which all of them leave
 * the same open is given up, and only what is open is answered next: to go through all the rest takes years where facts are many.
 */
function decidedBy(rule: GuidanceRule, asked: Asked, world: World, left: readonly string[]): World | null {
  const open = asked.answers.map((one) => leftOf(rule, rule.when, { ...world, [asked.code]: one }));
  if (new Set(open.map((one) => JSON.stringify(one))).size < 2) return null;
  const lacking = new Set(open.flatMap((one) => (typeof one === 'boolean' ? [] : factsOf(one))));
  const next = left.find((code) => lacking.has(code));
  if (next === undefined) return fullWorld(rule, world, left);
  const rest = left.filter((code) => code !== next);
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
