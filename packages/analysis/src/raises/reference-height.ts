import { requireRange } from '../check.ts';

/** A height that may serve as reference. */
export interface CandidateHeight {
  readonly heightM: number;
  readonly heightUM: number;
  /** false when the height cannot be judged, for example because its top lies in a gap */
  readonly usable: boolean;
}

/** How the reference is formed from the first repetitions or from practice raises. */
export interface ReferenceChoice {
  /** how many of the first repetitions are looked at [-] */
  readonly raises: number;
  /** how many of the best are averaged [-] */
  readonly best: number;
  /** a first repetition higher than the practice reference by more than this share takes its place [-] */
  readonly raisedBy: number;
}

/** The height that repetitions are held against. */
export interface ReferenceHeight {
  readonly heightM: number;
  readonly heightUM: number;
  /** repetitions of the set that gave it, from 1; empty when practice raises did */
  readonly fromRepetitions: readonly number[];
  /** an early repetition was higher than the practice raises and took their place */
  readonly raised: boolean;
}

interface Numbered extends CandidateHeight {
  readonly index: number;
}

function bestMean(candidates: readonly Numbered[], best: number): Omit<ReferenceHeight, 'raised'> | undefined {
  const highest = candidates
    .filter((one) => one.usable)
    .sort((a, b) => b.heightM - a.heightM || a.index - b.index)
    .slice(0, best);
  if (highest.length === 0) return undefined;
  let sum = 0;
  let squares = 0;
  for (const one of highest) {
    sum += one.heightM;
    squares += one.heightUM ** 2;
  }
  return {
    heightM: sum / highest.length,
    heightUM: Math.sqrt(squares) / highest.length,
    fromRepetitions: highest.map((one) => one.index).sort((a, b) => a - b),
  };
}

/**
 * Height that the repetitions of a set are held against: the mean of the best of the first repetitions, or of the
 * practice raises where there were any. A first repetition that beats the practice raises by more than the rule takes
 * their place, so that a half-hearted practice raise lets nothing through.
 *
 * @param repetitions - heights of the set in order [m]
 * @param choice - how many are looked at and averaged, see {@link ReferenceChoice} [-]
 * @param practice - heights of the raises before the set; empty when there were none [m]
 * @returns the reference with its standard uncertainty; undefined when no height is usable [m]
 * @throws {@link InputError} `out-of-range` when fewer than one repetition is looked at or averaged
 *
 * Source: common practice, no source (best two of three practice raises); best two of the first five: ours
 */
export function referenceHeight(
  repetitions: readonly CandidateHeight[],
  choice: ReferenceChoice,
  practice: readonly CandidateHeight[],
): ReferenceHeight | undefined {
  requireRange(choice.raises, choice.raises >= 1, 'choice.raises', '>= 1');
  requireRange(choice.best, choice.best >= 1, 'choice.best', '>= 1');
  const first = repetitions.slice(0, choice.raises).map((one, i) => ({ ...one, index: i + 1 }));
  const practised = bestMean(
    practice.map((one, i) => ({ ...one, index: i + 1 })),
    choice.best,
  );
  if (practised === undefined) {
    const found = bestMean(first, choice.best);
    return found === undefined ? undefined : { ...found, raised: false };
  }
  const highest = bestMean(first, 1);
  if (highest !== undefined && highest.heightM > practised.heightM * (1 + choice.raisedBy)) {
    return { ...highest, raised: true };
  }
  return { ...practised, fromRepetitions: [], raised: false };
}
