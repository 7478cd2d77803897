import type { BodySettings } from './settings.ts';

/** What is compared of a set that was learnt. */
export interface LearntSet {
  /** log evidence for a set against none [nat] */
  readonly evidence: number;
  /** log evidence of the whole recording, whatever it holds [nat] */
  readonly likelihood: number;
  readonly rhythm: { readonly shapeMisfit: number };
}

/** Differences of misfits that say nothing [-]; ours. */
const MISFIT_BY_CHANCE = 0.02;

/**
 * Whether one of two sets that were learnt from the same recording explains it better.
 *
 * The likelier one of the whole recording does, but for two things. Noise alone can be made to explain a short recording, so a
 * fit without a set never replaces one with a set. And with less of a shape to keep to, halves of repetitions explain what
 * wholes do, so a vaguer shape never replaces a clearer one.
 *
 * @param one - a set [nat, -]
 * @param other - the set in whose place it would be [nat, -]
 * @param settings - least evidence of a set, and of one that is looked for a second time [nat]
 * @returns whether it takes that place [-]
 *
 * Source: ours
 */
export function isBetterSet(
  one: LearntSet,
  other: LearntSet,
  settings: Pick<BodySettings, 'leastEvidenceOfSet' | 'leastEvidenceFilled'>,
): boolean {
  if (other.evidence <= settings.leastEvidenceOfSet) return one.evidence > settings.leastEvidenceFilled;
  if (one.evidence <= settings.leastEvidenceOfSet) return false;
  const isShaped = one.rhythm.shapeMisfit <= other.rhythm.shapeMisfit + MISFIT_BY_CHANCE;
  return isShaped && one.likelihood > other.likelihood;
}
