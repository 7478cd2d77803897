/** A leg, as the anatomy names it. */
export type Leg = 'left' | 'right';

export const LEGS = ['left', 'right'] as const satisfies readonly Leg[];

/** Where an answer came from. */
export interface From {
  /** what it was told or measured by, such as `heel-raise` or `morning-check` */
  readonly what: string;
  /** by the calendar of the place; null where it has none */
  readonly day: string | null;
  readonly visitId?: string;
}

/** An answer: a number, with bounds where it has them, or a code. */
export interface KnownFact {
  readonly value: number | string;
  readonly low?: number;
  readonly high?: number;
  readonly from: From;
}

/** No answer, and why: never zero, and never taken to be well. */
export interface MissingFact {
  readonly missing: string;
}

export type GivenFact = KnownFact | MissingFact;

/** Answers by the code of the fact; one that is not there was not given. */
export type FactsOf = Readonly<Record<string, GivenFact>>;

/** What is known of somebody on a day. */
export interface GivenFacts {
  readonly legs: Readonly<Record<Leg, FactsOf>>;
  readonly person: FactsOf;
}
