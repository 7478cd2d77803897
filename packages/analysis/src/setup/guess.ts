import type { GuessRule } from './setup-settings.ts';

/** One answer and how probable it is. */
export interface Likely<Answer extends string> {
  readonly answer: Answer;
  readonly probability: number;
}

/** A guess about a sensor with what it rests on. */
export interface Guess<Answer extends string, Code extends string = string> {
  /** the most probable answer; null when nothing can be said */
  readonly answer: Answer | null;
  /** probability of the answer, 0 to 1; 0 when there is none [-] */
  readonly confidence: number;
  /** whether somebody is to be asked */
  readonly asks: boolean;
  /** what may be offered when one asks, the most probable first */
  readonly likely: readonly Likely<Answer>[];
  /** code of the sentence that says why, and the figures in it [-] */
  readonly evidence: { readonly code: Code; readonly figures: Readonly<Record<string, number>> };
}

/** An answer with the logarithm of its weight. */
export type Weighed<Answer extends string> = readonly [answer: Answer, logWeight: number];

/**
 * A guess from weighed answers: their weights are made to sum to 1 together with that of "none of these".
 *
 * @param weighed - answers and logarithms of their weights [-]
 * @param noneLog - logarithm of the weight of none of these; -Infinity where that cannot be [-]
 * @param evidence - code and figures of the sentence that says why [-]
 * @param rule - when to ask and what to offer, see {@link GuessRule} [-]
 * @returns the guess; its answer is null when none of these is more probable than each [-]
 *
 * Source: Bayes' rule
 */
export function weigh<Answer extends string, Code extends string>(
  weighed: readonly Weighed<Answer>[],
  noneLog: number,
  evidence: { readonly code: Code; readonly figures: Readonly<Record<string, number>> },
  rule: GuessRule,
): Guess<Answer, Code> {
  const greatest = Math.max(noneLog, ...weighed.map(([, log]) => log));
  const none = Math.exp(noneLog - greatest);
  const sizes = weighed.map(([answer, log]) => ({ answer, size: Math.exp(log - greatest) }));
  const sum = sizes.reduce((total, { size }) => total + size, none);
  const sorted = sizes
    .map(({ answer, size }) => ({ answer, probability: size / sum }))
    .sort((a, b) => b.probability - a.probability);
  const best = sorted[0];
  const isKnown = best !== undefined && best.probability > none / sum;
  return {
    answer: isKnown ? best.answer : null,
    confidence: isKnown ? best.probability : 0,
    asks: !isKnown || best.probability < rule.askBelow,
    likely: sorted.filter(({ probability }) => probability >= rule.offerFrom),
    evidence,
  };
}

/**
 * A guess about which nothing can be said.
 *
 * @param answers - what may be offered [-]
 * @param evidence - code and figures of the sentence that says why [-]
 * @returns a guess without an answer; all are offered alike [-]
 *
 * Source: ours
 */
export function noGuess<Answer extends string, Code extends string>(
  answers: readonly Answer[],
  evidence: { readonly code: Code; readonly figures: Readonly<Record<string, number>> },
): Guess<Answer, Code> {
  const likely = answers.map((answer) => ({ answer, probability: 1 / answers.length }));
  return { answer: null, confidence: 0, asks: true, likely, evidence };
}
