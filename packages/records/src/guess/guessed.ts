/** Below this a guess is asked about; ours. */
export const ASK_BELOW = 0.9;

/** Why something was guessed: the code of a sentence, and what stands in its blanks. */
export interface Evidence {
  readonly code: string;
  readonly figures: Readonly<Record<string, string | number>>;
}

/** An answer and how probable it is. */
export interface Option<Value> {
  readonly value: Value;
  readonly probability: number;
}

/** A guess about a file, with what it rests on. */
export interface Guessed<Value> {
  /** the most probable answer; null where nothing can be said */
  readonly value: Value | null;
  /** probability that it is right, 0 to 1; 0 where there is none */
  readonly confidence: number;
  readonly asks: boolean;
  /** what may be offered when one asks, the most probable first */
  readonly options: readonly Option<Value>[];
  readonly evidence: readonly Evidence[];
}

export function evidence(code: string, figures: Evidence['figures'] = {}): Evidence {
  return { code, figures };
}

/** No guess is ever certain: a file can be made to contradict any of them. */
const MOST = 0.995;

/** A guess with its probability, and what else it may be. */
export function guessed<Value>(
  value: Value,
  confidence: number,
  because: readonly Evidence[],
  others: readonly Option<Value>[] = [],
): Guessed<Value> {
  const held = Math.min(MOST, confidence);
  const options = [{ value, probability: held }, ...others.filter((one) => one.value !== value)];
  return { value, confidence: held, asks: held < ASK_BELOW, options, evidence: because };
}

/** Nothing can be said, and one must ask. */
export function unknown<Value>(because: readonly Evidence[], offered: readonly Value[] = []): Guessed<Value> {
  const options = offered.map((value) => ({ value, probability: 0 }));
  return { value: null, confidence: 0, asks: true, options, evidence: because };
}

/** Nothing can be said and nothing needs to be: it is not asked. */
export function left<Value>(because: readonly Evidence[]): Guessed<Value> {
  return { value: null, confidence: 0, asks: false, options: [], evidence: because };
}

/** A guess from weights on the log scale: made to sum to 1, the greatest first. Source: Bayes' rule. */
export function weighed<Value>(
  weights: readonly (readonly [Value, number])[],
  because: readonly Evidence[],
): Guessed<Value> {
  const most = Math.max(...weights.map(([, log]) => log));
  const sizes = weights.map(([value, log]) => ({ value, size: Math.exp(log - most) }));
  const sum = sizes.reduce((total, { size }) => total + size, 0);
  const options = sizes
    .map(({ value, size }) => ({ value, probability: Math.min(MOST, size / sum) }))
    .sort((a, b) => b.probability - a.probability);
  const best = options[0];
  if (best === undefined) return unknown(because);
  return {
    value: best.value,
    confidence: best.probability,
    asks: best.probability < ASK_BELOW,
    options: options.filter(({ probability }) => probability >= 0.01),
    evidence: because,
  };
}
