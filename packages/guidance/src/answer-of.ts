import type { FactEntry } from '@surae/shared';
import type { FactsOf, GivenFacts, KnownFact, Leg, MissingFact } from './given-facts.ts';
import { GuidanceError } from './guidance-error.ts';

/** The answer to a fact, or why there is none. */
export type Answer = KnownFact | MissingFact;

function refuse(code: string, value: number | string): never {
  throw new GuidanceError('not-an-answer', { fact: code, value });
}

function checked(entry: FactEntry, fact: KnownFact): KnownFact {
  const { code, holds } = entry;
  const { value } = fact;
  if (holds.kind === 'code')
    return typeof value === 'string' && holds.codes.includes(value) ? fact : refuse(code, value);
  if (typeof value !== 'number') return refuse(code, value);
  const { low = value, high = value } = fact;
  const isIn = (one: number): boolean => one >= holds.least && (holds.most === null || one <= holds.most);
  // a bound may be open, the value itself may not
  if (!Number.isFinite(value) || !(low <= value && value <= high)) return refuse(code, value);
  return isIn(value) && isIn(low) && (high === Number.POSITIVE_INFINITY || isIn(high)) ? fact : refuse(code, value);
}

/**
 * The answer to a fact, checked against what the fact may hold.
 *
 * @param entry - the fact [-]
 * @param bag - answers of the leg, or of the person, that the fact is of [unit of the fact]
 * @returns the answer, or why there is none: `not-given` where nothing was said of it [unit of the fact]
 * @throws {@link GuidanceError} `not-an-answer` for a number out of its range or an unknown code
 *
 * Source: ours
 */
export function answerOf(entry: FactEntry, bag: FactsOf): Answer {
  const fact = Object.hasOwn(bag, entry.code) ? bag[entry.code] : undefined;
  if (fact === undefined) return { missing: 'not-given' };
  return 'missing' in fact ? fact : checked(entry, fact);
}

/**
 * Every answer there is for a leg with those of the person, or for the person alone.
 *
 * @param leg - null for the person [-]
 * @param given - what is known [unit of the fact]
 * @param facts - every fact there is [-]
 * @returns answers by the code of the fact; for the person, none to a fact of a leg [unit of the fact]
 * @throws {@link GuidanceError} see {@link answerOf}
 *
 * Source: ours
 */
export function answersFor(
  leg: Leg | null,
  given: GivenFacts,
  facts: Iterable<FactEntry>,
): ReadonlyMap<string, Answer> {
  const answers = new Map<string, Answer>();
  for (const entry of facts) {
    if (entry.of === 'person') answers.set(entry.code, answerOf(entry, given.person));
    else if (leg !== null) answers.set(entry.code, answerOf(entry, given.legs[leg]));
  }
  return answers;
}
