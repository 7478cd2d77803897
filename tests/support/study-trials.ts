import type { TrialFacts } from '../../packages/study/src/quality/trial-facts.ts';

/** A trial of heel raises of which nothing is to be looked at; `scored` null was not measured. */
export function studyTrial(
  trial: string,
  cells: Readonly<Record<string, string>>,
  scored: number | null,
  differing: Partial<TrialFacts> = {},
): TrialFacts {
  return {
    trial,
    cells,
    sha256: `hash of ${trial}`,
    refusal: null,
    figures: {
      count: { attempted: 20, scored, censored: false },
      measures: { peakHeightM: 0.1 },
      gate: { usable: 'yes' },
    },
    issues: [],
    usable: 'yes',
    withheld: [],
    sameAs: null,
    settingsHash: 'hash of settings',
    ...differing,
  };
}
