import { GuidanceError } from '../guidance-error.ts';
import { inKg } from './in-kg.ts';
import { type LoadRange, relativeOf } from './relative-load.ts';

/** How much of an exercise; null was not told. */
export interface DoseAsked {
  /** of `EXERCISES`; null for words */
  readonly code: string | null;
  readonly side: 'left' | 'right' | 'both';
  /** added to body weight; null is none */
  readonly load: { readonly value: number; readonly unit: string } | null;
  readonly sets: number | null;
  readonly repetitions: number | null;
  readonly tempo: { readonly upS: number | null; readonly topS: number | null; readonly downS: number | null } | null;
  readonly holdS: number | null;
}

/** Load on the tendon of one leg in one session. */
export interface LegDose {
  /** [s] */
  readonly underTensionS: number;
  /** the same, weighed by the load beside a raise on that leg: seconds of a raise, a range; null where it cannot be weighed [s] */
  readonly asRaiseS: LoadRange | null;
  /** what is missing to it: the load that is added, or how the exercise loads the tendon */
  readonly unweighed: 'load' | 'relative-load' | null;
}

/** Why there is no dose. */
export interface WithheldDose {
  readonly withheld: 'sets' | 'repetitions' | 'time';
}

/** Time under tension of one repetition or hold; null where tempo or hold is not told [s]. Source: the sum of the phases of a tempo. */
export function secondsOfOne({ tempo, holdS }: Pick<DoseAsked, 'tempo' | 'holdS'>): number | null {
  if (holdS !== null) return holdS;
  if (tempo === null || tempo.upS === null || tempo.downS === null) return null;
  return tempo.upS + (tempo.topS ?? 0) + tempo.downS;
}

/**
 * Load on the tendon of one leg: sets x repetitions x time under tension x load beside a raise. A hold without a number of repetitions is
 * one a set.
 *
 * @param asked - see {@link DoseAsked} [s, kg]
 * @param bodyMassKg - null is not known [kg]
 * @returns the dose of each leg that does it, or what is missing to it [s]
 * @throws {@link GuidanceError} `not-an-answer` for a mass that is none
 *
 * Source: ours: the product of what is planned; how the tendon answers to it is not known
 */
export function doseOf(asked: DoseAsked, bodyMassKg: number | null): LegDose | WithheldDose {
  if (bodyMassKg !== null && !(Number.isFinite(bodyMassKg) && bodyMassKg > 0))
    throw new GuidanceError('not-an-answer', { fact: 'body-mass', value: bodyMassKg });
  const { code, load, sets, holdS } = asked;
  if (sets === null) return { withheld: 'sets' };
  const repetitions = asked.repetitions ?? (holdS === null ? null : 1);
  if (repetitions === null) return { withheld: 'repetitions' };
  const each = secondsOfOne(asked);
  if (each === null) return { withheld: 'time' };
  const underTensionS = sets * repetitions * each;
  const carriedKg = load === null ? 0 : inKg(load);
  if (carriedKg === null || (load !== null && bodyMassKg === null))
    return { underTensionS, asRaiseS: null, unweighed: 'load' };
  const extra = bodyMassKg === null ? 0 : carriedKg / bodyMassKg;
  const relative = code === null ? null : relativeOf(code, extra);
  if (relative === null) return { underTensionS, asRaiseS: null, unweighed: 'relative-load' };
  const { range } = relative;
  return { underTensionS, asRaiseS: [underTensionS * range[0], underTensionS * range[1]], unweighed: null };
}
