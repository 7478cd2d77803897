import { FAULT_KINDS, type FaultKind } from '@surae/shared';
import { requireRange } from '../check.ts';
import { gaussian, RandomNumbers } from '../signal/random.ts';

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

/** The set as plain columns, so that a draw makes nothing anew; what is certain is told once and not drawn. */
interface DrawnSet {
  readonly exists: Float64Array;
  /** 1 where an answer is known, 0 where a gap hides it */
  readonly judged: Uint8Array;
  /** 1 where something certainly speaks against it */
  readonly isNever: Uint8Array;
  /** the faults that it certainly has, a bit for each kind */
  readonly faults: Int32Array;
  /** NaN where height is not judged, or certainly reached or missed */
  readonly share: Float64Array;
  readonly shareU: Float64Array;
  /** where the other criteria of a repetition end; those of the next follow */
  readonly othersTo: Int32Array;
  readonly probability: Float64Array;
  /** the kind of fault as one bit, 0 for none */
  readonly kind: Int32Array;
}

/** Rarer than this, something happens in no draw: with fifty repetitions, four criteria and 2000 draws once in 2500 sets [-]; ours. */
const never = 1e-9;

/** Standard deviations that a normal deviate exceeds as rarely [-]. */
const farAway = 6;

function bitOf(kind: FaultKind | undefined): number {
  return kind === undefined ? 0 : 1 << FAULT_KINDS.indexOf(kind);
}

/** How far a height lies from its limit, in standard deviations of what is drawn of both; NaN where height is not judged. */
function fromLimit({ height }: UncertainRepetition, { heightShare, referenceU }: CountRules): number {
  if (height === undefined || heightShare === undefined) return Number.NaN;
  return (height.share - heightShare) / Math.hypot(height.u, heightShare * referenceU);
}

function drawnSet(repetitions: readonly UncertainRepetition[], rules: CountRules): DrawnSet {
  const apart = repetitions.map((one) => fromLimit(one, rules));
  const isDrawn = apart.map((deviations) => Math.abs(deviations) <= farAway);
  const certain = repetitions.map((one) => one.others.filter(({ probability }) => probability <= never));
  const open = repetitions.map((one) =>
    one.others.filter(({ probability }) => probability > never && probability < 1 - never),
  );
  const others = open.flat();
  let to = 0;
  return {
    exists: Float64Array.from(repetitions, ({ exists }) => (exists > 1 - never ? 1 : exists)),
    judged: Uint8Array.from(repetitions, (one) => Number(one.judged)),
    isNever: Uint8Array.from(apart, (deviations, k) => Number(deviations < -farAway || certain[k].length > 0)),
    faults: Int32Array.from(apart, (deviations, k) =>
      certain[k].reduce((bits, { kind }) => bits | bitOf(kind), deviations < -farAway ? bitOf('height') : 0),
    ),
    share: Float64Array.from(repetitions, ({ height }, k) => (isDrawn[k] ? height!.share : Number.NaN)),
    shareU: Float64Array.from(repetitions, ({ height }) => height?.u ?? 0),
    othersTo: Int32Array.from(open, (those) => (to += those.length)),
    probability: Float64Array.from(others, (one) => one.probability),
    kind: Int32Array.from(others, (one) => bitOf(one.kind)),
  };
}

/** Whether every draw comes to the same. */
function isCertain({ exists, judged, share, probability }: DrawnSet): boolean {
  return probability.length === 0 && share.every(Number.isNaN) && exists.every((p) => p === 1) && !judged.includes(0);
}

/**
 * Whether a drawn height is below a limit. The random numbers are those that {@link gaussian} takes, and so is the answer; where
 * it is plain already from the bound -2 ln s <= 2 (1/s - 1), no logarithm is taken.
 */
function fallsBelow(share: number, u: number, limit: number, random: RandomNumbers): boolean {
  if (!(u > 0)) return share < limit;
  for (;;) {
    const x = 2 * random.next() - 1;
    const y = 2 * random.next() - 1;
    const square = x * x + y * y;
    if (!(square > 0 && square < 1)) continue;
    const apart = limit - share;
    // the hundredth and the last term are far above what rounding can do
    if (apart * apart > 2.02 * u * u * (1 / square - 1) + 1e-20) return apart > 0;
    return share + u * (x * Math.sqrt((-2 * Math.log(square)) / square)) < limit;
  }
}

/** A repetition that is missing more rarely is not asked for in every draw [-]; ours. */
const seldom = 0.1;

/**
 * In which draws repetitions are missing that hardly ever are: how many draws pass before the next one follows the geometric
 * distribution, so that a number is drawn for what happens and not for what does not.
 */
class SeldomMissing {
  readonly #next: Float64Array;
  readonly #perDraw: Float64Array;
  readonly #random: RandomNumbers;

  constructor(exists: Float64Array, random: RandomNumbers) {
    this.#random = random;
    this.#perDraw = exists.map((probability) => Math.log(probability));
    this.#next = exists.map((probability, k) =>
      probability < 1 && probability > 1 - seldom ? this.#passed(k) : Number.POSITIVE_INFINITY,
    );
  }

  #passed(k: number): number {
    return Math.floor(Math.log(1 - this.#random.next()) / this.#perDraw[k]);
  }

  /** Whether a repetition is missing in a draw; draws are asked for in their order. */
  is(k: number, draw: number): boolean {
    if (this.#next[k] !== draw) return false;
    this.#next[k] = draw + 1 + this.#passed(k);
    return true;
  }
}

/** Rows of faults of one kind, one after the other. */
class FaultRows {
  readonly #rows = new Int32Array(FAULT_KINDS.length);
  readonly #most: number;
  #isAny = false;

  constructor(faultsInARow: number | undefined) {
    this.#most = faultsInARow ?? Number.POSITIVE_INFINITY;
  }

  clear(): void {
    this.#rows.fill(0);
    this.#isAny = false;
  }

  /** Takes the faults of the next repetition, a bit for each kind; whether a row is now complete. */
  ends(faults: number): boolean {
    if (faults === 0 && !this.#isAny) return false;
    this.#isAny = faults !== 0;
    let isComplete = false;
    for (let k = 0; k < this.#rows.length; k++) {
      this.#rows[k] = (faults >> k) & 1 ? this.#rows[k] + 1 : 0;
      if (this.#rows[k] >= this.#most) isComplete = true;
    }
    return isComplete;
  }
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
 * @throws {@link InputError} `out-of-range` for draws, seed or faults in a row
 *
 * Source: ours; the end rule as in {@link faultEnd}
 */
export function countInterval(
  repetitions: readonly UncertainRepetition[],
  rules: CountRules,
  draws: number,
  seed: number,
): CountInterval {
  requireRange(draws, Number.isInteger(draws) && draws >= 100, 'draws', 'a whole number >= 100');
  const { heightShare, referenceU, faultsInARow, cap = Number.POSITIVE_INFINITY } = rules;
  if (faultsInARow !== undefined) requireRange(faultsInARow, faultsInARow >= 1, 'faultsInARow', '>= 1');
  const random = new RandomNumbers(seed);
  const next = (): number => random.next();
  const set = drawnSet(repetitions, rules);
  const { exists, judged, isNever, share, shareU, othersTo, probability, kind } = set;
  const drawn = isCertain(set) ? 1 : draws;
  const missing = new SeldomMissing(exists, random);
  const rows = new FaultRows(faultsInARow);
  const heightBit = bitOf('height');
  const validCounts = new Float64Array(repetitions.length + 1);
  const scoredCounts = new Float64Array(repetitions.length + 1);
  for (let draw = 0; draw < drawn; draw++) {
    const reference = 1 + (referenceU > 0 ? referenceU * gaussian(next) : 0);
    const limit = (heightShare ?? Number.NaN) * reference * (1 - 1e-12);
    rows.clear();
    let hasEnded = false;
    let present = 0;
    let valid = 0;
    let scored = 0;
    for (let k = 0; k < exists.length; k++) {
      if (exists[k] > 1 - seldom ? missing.is(k, draw) : random.next() >= exists[k]) continue;
      let isValid: boolean;
      let faults = 0;
      if (judged[k] === 0) isValid = random.next() < 0.5;
      else {
        isValid = isNever[k] === 0;
        faults = set.faults[k];
        if (!Number.isNaN(share[k]) && fallsBelow(share[k], shareU[k], limit, random)) {
          isValid = false;
          faults |= heightBit;
        }
        for (let other = k === 0 ? 0 : othersTo[k - 1]; other < othersTo[k]; other++) {
          if (random.next() < probability[other]) continue;
          isValid = false;
          faults |= kind[other];
        }
      }
      if (isValid) {
        valid += 1;
        if (!hasEnded && present < cap) scored += 1;
      }
      present += 1;
      // a repetition that a gap hides neither adds to a row nor breaks it
      if (!hasEnded && judged[k] === 1) hasEnded = rows.ends(faults);
    }
    validCounts[valid] += 1;
    scoredCounts[scored] += 1;
  }
  return {
    validLow: countQuantile(validCounts, drawn, 0.025),
    validHigh: countQuantile(validCounts, drawn, 0.975),
    scoredLow: countQuantile(scoredCounts, drawn, 0.025),
    scoredHigh: countQuantile(scoredCounts, drawn, 0.975),
  };
}
