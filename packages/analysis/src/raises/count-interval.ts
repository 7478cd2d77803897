import type { FaultKind } from '@surae/shared';
import { requireRange } from '../check.ts';
import { createRandom, gaussian } from '../signal/random.ts';
import { faultEnd } from './end-rule.ts';

/** What is uncertain about one repetition. */
export interface UncertainRepetition {
  /** probability that it was a repetition at all, 0 to 1 */
  readonly exists: number;
  /** height as a share of the reference with its standard uncertainty; undefined where height is not judged */
  readonly height: { readonly share: number; readonly u: number } | undefined;
  /** the other criteria: probability of meeting each, and the kind of fault that failing it is */
  readonly others: readonly { readonly probability: number; readonly kind: FaultKind | undefined }[];
  /** false when a data gap hides it: then either answer is as likely */
  readonly judged: boolean;
}

/** What the draws are held against. */
export interface CountRules {
  /** share of the reference that a height must reach; undefined when height is not judged [-] */
  readonly heightShare: number | undefined;
  /** standard uncertainty of the reference as a share of itself, common to all repetitions of a draw [-] */
  readonly referenceU: number;
  /** faults of one kind in a row that end the test; undefined for no such rule [-] */
  readonly faultsInARow: number | undefined;
  /** repetitions after which the test ends anyway; undefined for none [-] */
  readonly cap: number | undefined;
}

/** 95 % bounds of the valid repetitions and of those before the end of the test. */
export interface CountInterval {
  readonly validLow: number;
  readonly validHigh: number;
  readonly scoredLow: number;
  readonly scoredHigh: number;
}

interface Draw {
  readonly faults: ReadonlySet<FaultKind>;
  readonly judged: boolean;
  readonly valid: boolean;
}

function drawOne(one: UncertainRepetition, rules: CountRules, reference: number, random: () => number): Draw {
  const faults = new Set<FaultKind>();
  if (!one.judged) return { faults, judged: false, valid: random() < 0.5 };
  let valid = true;
  if (one.height !== undefined && rules.heightShare !== undefined) {
    const share = one.height.share + (one.height.u > 0 ? one.height.u * gaussian(random) : 0);
    if (share < rules.heightShare * reference * (1 - 1e-12)) {
      valid = false;
      faults.add('height');
    }
  }
  for (const other of one.others) {
    if (random() < other.probability) continue;
    valid = false;
    if (other.kind !== undefined) faults.add(other.kind);
  }
  return { faults, judged: true, valid };
}

/** Smallest count that at least the given share of the draws does not exceed. */
function countQuantile(histogram: Float64Array, draws: number, share: number): number {
  let sum = 0;
  for (let count = 0; count < histogram.length; count++) {
    sum += histogram[count];
    if (sum >= share * draws - 1e-9) return count;
  }
  return histogram.length - 1;
}

/**
 * 95 % bounds of the count of valid repetitions and of the score, by judging the set again many times with every
 * uncertain figure drawn anew and the end rule applied in each draw. Without an end rule the score is a sum of independent
 * yes-or-no draws, whose exact distribution is the Poisson binomial.
 *
 * @param repetitions - attempted ones, and doubtful movements with their probability, in time order [-]
 * @param rules - see {@link CountRules} [-]
 * @param draws - number of draws, >= 100 [-]
 * @param seed - seed of the random numbers, a whole number [-]
 * @returns the 2.5 % and 97.5 % quantiles of both counts [-]
 * @throws {@link InputError} `out-of-range` for draws or seed
 *
 * Source: ours
 */
export function countInterval(
  repetitions: readonly UncertainRepetition[],
  rules: CountRules,
  draws: number,
  seed: number,
): CountInterval {
  requireRange(draws, Number.isInteger(draws) && draws >= 100, 'draws', 'a whole number >= 100');
  const random = createRandom(seed);
  const validCounts = new Float64Array(repetitions.length + 1);
  const scoredCounts = new Float64Array(repetitions.length + 1);
  for (let draw = 0; draw < draws; draw++) {
    const reference = 1 + (rules.referenceU > 0 ? rules.referenceU * gaussian(random) : 0);
    const present: Draw[] = [];
    for (const one of repetitions) {
      if (one.exists < 1 && random() >= one.exists) continue;
      present.push(drawOne(one, rules, reference, random));
    }
    const end = rules.faultsInARow === undefined ? undefined : faultEnd(present, rules.faultsInARow);
    const last = Math.min(end === undefined ? present.length : end.index + 1, rules.cap ?? present.length);
    let valid = 0;
    let scored = 0;
    for (let i = 0; i < present.length; i++) {
      if (!present[i].valid) continue;
      valid += 1;
      if (i < last) scored += 1;
    }
    validCounts[valid] += 1;
    scoredCounts[scored] += 1;
  }
  return {
    validLow: countQuantile(validCounts, draws, 0.025),
    validHigh: countQuantile(validCounts, draws, 0.975),
    scoredLow: countQuantile(scoredCounts, draws, 0.025),
    scoredHigh: countQuantile(scoredCounts, draws, 0.975),
  };
}
