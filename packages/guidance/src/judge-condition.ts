import type { Condition, GuidanceRule } from '@surae/shared';
import type { Answer } from './answer-of.ts';
import type { KnownFact } from './given-facts.ts';
import { GuidanceError } from './guidance-error.ts';
import { allHold, anyHolds, doesNotHold, type Held } from './verdict.ts';

/** How a condition was judged. */
export interface Judged {
  readonly held: Held;
  /** facts because of which it cannot be told, since nothing is known of them */
  readonly missing: readonly string[];
  /** facts because of which it cannot be told, since their bounds lie on both sides of a number */
  readonly between: readonly string[];
}

/** What a condition is judged on. */
export interface Ground {
  /** by the code of a fact, its stand-in already in the place of what is missing */
  readonly answers: ReadonlyMap<string, Answer>;
  readonly numbers: GuidanceRule['numbers'];
}

const yes: Judged = { held: 'yes', missing: [], between: [] };
const no: Judged = { held: 'no', missing: [], between: [] };

const plain = (isSo: boolean): Judged => (isSo ? yes : no);

function joined(held: Held, parts: readonly Judged[]): Judged {
  if (held !== 'cannot-tell') return plain(held === 'yes');
  const open = parts.filter((one) => one.held === 'cannot-tell');
  const [only] = open;
  if (open.length === 1 && only !== undefined) return only;
  return {
    held,
    missing: [...new Set(open.flatMap(({ missing }) => missing))],
    between: [...new Set(open.flatMap(({ between }) => between))],
  };
}

/** Where an answer lies against a number: yes where all of its bounds do, no where none does. */
function against(fact: string, known: KnownFact, isSo: (one: number) => boolean): Judged {
  const value = Number(known.value);
  const ends = [isSo(known.low ?? value), isSo(known.high ?? value)];
  if (ends[0] === ends[1]) return plain(ends[0] === true);
  return { held: 'cannot-tell', missing: [], between: [fact] };
}

function numberOf(name: string, numbers: Ground['numbers']): number {
  const number = Object.hasOwn(numbers, name) ? numbers[name] : undefined;
  if (number === undefined) throw new GuidanceError('unknown-number', { number: name });
  return number.value;
}

/**
 * Whether a condition holds, and what would have to be known where it cannot be told.
 *
 * @param condition - see {@link Condition} [-]
 * @param ground - answers and numbers [unit of the fact]
 * @returns the verdict, and the facts that it waits for [-]
 * @throws {@link GuidanceError} `unknown-fact` or `unknown-number` for a name that the ground does not hold
 *
 * Source: ours; {@link allHold}
 */
export function judgeCondition(condition: Condition, ground: Ground): Judged {
  if ('all' in condition) {
    const parts = condition.all.map((one) => judgeCondition(one, ground));
    return joined(allHold(parts.map(({ held }) => held)), parts);
  }
  if ('any' in condition) {
    const parts = condition.any.map((one) => judgeCondition(one, ground));
    return joined(anyHolds(parts.map(({ held }) => held)), parts);
  }
  if ('not' in condition) {
    const inner = judgeCondition(condition.not, ground);
    const held = doesNotHold(inner.held);
    return held === 'cannot-tell' ? inner : plain(held === 'yes');
  }
  const { fact } = condition;
  const answer = ground.answers.get(fact);
  if (answer === undefined) throw new GuidanceError('unknown-fact', { fact });
  if ('missing' in answer) return { held: 'cannot-tell', missing: [fact], between: [] };
  if ('is' in condition) return plain(answer.value === condition.is);
  if ('oneOf' in condition) return plain(condition.oneOf.includes(String(answer.value)));
  if ('atLeast' in condition) {
    const limit = numberOf(condition.atLeast, ground.numbers);
    return against(fact, answer, (one) => one >= limit);
  }
  if ('atMost' in condition) {
    const limit = numberOf(condition.atMost, ground.numbers);
    return against(fact, answer, (one) => one <= limit);
  }
  if ('above' in condition) {
    const limit = numberOf(condition.above, ground.numbers);
    return against(fact, answer, (one) => one > limit);
  }
  const limit = numberOf(condition.below, ground.numbers);
  return against(fact, answer, (one) => one < limit);
}

/** A condition never changes: what it asks about is read once. */
const asked = new WeakMap<Condition, readonly string[]>();

function read(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(read);
  if ('any' in condition) return condition.any.flatMap(read);
  return 'not' in condition ? read(condition.not) : [condition.fact];
}

/** Codes of the facts that a condition asks about, each once, in their order. */
export function factsOf(condition: Condition): readonly string[] {
  const known = asked.get(condition) ?? [...new Set(read(condition))];
  asked.set(condition, known);
  return known;
}

/** Names of the numbers that a condition holds facts against, each with its fact. */
export function numbersOf(condition: Condition): readonly { readonly fact: string; readonly number: string }[] {
  if ('all' in condition) return condition.all.flatMap(numbersOf);
  if ('any' in condition) return condition.any.flatMap(numbersOf);
  if ('not' in condition) return numbersOf(condition.not);
  if ('is' in condition || 'oneOf' in condition) return [];
  const { fact } = condition;
  if ('atLeast' in condition) return [{ fact, number: condition.atLeast }];
  if ('atMost' in condition) return [{ fact, number: condition.atMost }];
  return [{ fact, number: 'above' in condition ? condition.above : condition.below }];
}
