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

function bagOf(entry: FactEntry, leg: Leg | null, given: GivenFacts): FactsOf {
  if (entry.of === 'person') return given.person;
  if (leg === null)
    throw new GuidanceError('rule-fault', { fact: entry.code, why: 'a fact of a leg, asked of the person' });
  return given.legs[leg];
}

/**
 * The answer to a fact, checked against what the fact may hold.
 *
 * @param entry - the fact [-]
 * @param leg - of which leg; null of the person [-]
 * @param given - what is known [unit of the fact]
 * @returns the answer, or why there is none: `not-given` where nothing was said of it [unit of the fact]
 * @throws {@link GuidanceError} `not-an-answer` for a number out of its range or an unknown code
 *
 * Source: ours
 */
export function answerOf(entry: FactEntry, leg: Leg | null, given: GivenFacts): Answer {
  const bag = bagOf(entry, leg, given);
  const fact = Object.hasOwn(bag, entry.code) ? bag[entry.code] : undefined;
  if (fact === undefined) return { missing: 'not-given' };
  return 'missing' in fact ? fact : checked(entry, fact);
}
