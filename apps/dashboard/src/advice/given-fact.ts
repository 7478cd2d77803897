import type { GivenFact, GivenFacts, KnownFact, Leg } from '@surae/guidance';
import type { ADVICE_FROM_WORDS, ADVICE_MISSING_WORDS } from '@surae/shared';

/** What an answer was told or measured by. */
export type FromWhat = keyof typeof ADVICE_FROM_WORDS;

/** Why an answer is missing. */
export type MissingWhy = keyof typeof ADVICE_MISSING_WORDS;

/** Where an answer is from: a day by the calendar of the place, and the visit where it is of one. */
export interface Place {
  readonly day: string;
  readonly visitId?: string;
}

/** An answer with where it is from. */
export function known(
  value: number | string,
  what: FromWhat,
  { day, visitId }: Place,
  bounds: { readonly low?: number; readonly high?: number } = {},
): KnownFact {
  return { value, ...bounds, from: { what, day: day.slice(0, 10), ...(visitId === undefined ? {} : { visitId }) } };
}

/** No answer, and why. */
export function missing(why: MissingWhy): GivenFact {
  return { missing: why };
}

/** The answer where there is one, else why there is none. */
export function knownOr(
  value: number | string | null | undefined,
  why: MissingWhy,
  what: FromWhat,
  place: Place,
): GivenFact {
  return value == null ? missing(why) : known(value, what, place);
}

/** Why a fact of a leg, or of the person, is missing, as a code. */
export function missingOf(given: GivenFacts, leg: Leg): (fact: string) => string {
  return (fact) => {
    const one = given.legs[leg][fact] ?? given.person[fact];
    return one !== undefined && 'missing' in one ? one.missing : 'not-given';
  };
}
