import type { DoubtReason } from '../detection.ts';
import type { Candidate } from './candidate.ts';

/** What counts for and against a repetition; weights are natural logarithms of likelihood ratios. */
export interface EvidenceRule {
  readonly leastCycleS: number;
  /** highest that the heel can get with the forefoot down [m] */
  readonly greatestHeightM: number;
  /** deeper below rest, the forefoot cannot be down [m] */
  readonly belowFloorM: number;
  /** greater unexplained acceleration, the forefoot cannot stay where it is [m/s2] */
  readonly travelAcceleration: number;
}

export interface Evidence {
  readonly weight: number;
  /** what speaks against it most */
  readonly reason: DoubtReason;
}

/** What a bump says for itself, without the others. */
export interface OwnEvidence extends Evidence {
  /** the part that no likeness to others can outvote: the tempo is left out */
  readonly physical: number;
}

/** What the set says about how to read a bump. */
export interface SetHabits {
  /** usual unexplained acceleration of its repetitions; undefined for a heel sensor [m/s2] */
  readonly unexplained: number | undefined;
  /** true when nearly every bump goes below rest, as from a step */
  readonly dipsAreUsual: boolean;
  /** usual weight of the tempo of its repetitions; undefined when there are few [-] */
  readonly tempo: number | undefined;
}

/**
 * A penalty: nothing up to a limit, then growing in proportion to the excess.
 *
 * @param value - what is judged, >= 0 [any unit]
 * @param limit - where the penalty begins, > 0 [unit of value]
 * @param slope - penalty at twice the limit [-]
 * @returns 0 or less, never below -14 [-]
 *
 * Source: ours
 */
export function beyond(value: number, limit: number, slope: number): number {
  return value <= limit ? 0 : -Math.min(14, slope * (value / limit - 1));
}

/**
 * What a bump says for itself. A body can neither lift its heel higher than the foot is long, nor dip it below the
 * floor, nor travel with it, nor leave rest at speed; and it takes its time.
 *
 * @param candidate - the bump [SI]
 * @param rule - limits [SI]
 * @param atSpeed - log-likelihood ratio for a start or end at speed, 0 where not looked at [-]
 * @param habits - what the set says [SI]
 * @returns evidence [-]
 *
 * Source: ours (naive Bayes)
 */
export function ownEvidence(candidate: Candidate, rule: EvidenceRule, atSpeed: number, habits: SetHabits): OwnEvidence {
  const { heightM, ownRiseM, upS, downS, highS, belowM, unexplained } = candidate;
  // A quick raise shakes the sensor more, since its place on the lever is only roughly known.
  const briskness = Math.min(8, heightM / (upS * downS));
  const shaking = Math.max(rule.travelAcceleration + 0.15 * briskness, Math.min(2.5, 2 * (habits.unexplained ?? 0)));
  const terms: Evidence[] = [
    { weight: beyond(heightM, rule.greatestHeightM, 60), reason: 'stride' },
    { weight: habits.dipsAreUsual ? 0 : beyond(belowM, rule.belowFloorM, 6), reason: 'stride' },
    // both of its lows far below rest: the sensor hangs somewhere else
    {
      weight: habits.dipsAreUsual ? 0 : beyond(Math.max(0, ownRiseM - heightM), 3 * rule.belowFloorM, 6),
      reason: 'stride',
    },
    { weight: unexplained === undefined ? 0.5 : beyond(unexplained, shaking, 6), reason: 'stride' },
    { weight: beyond(1 / highS, 2.2 / rule.leastCycleS, 12), reason: 'too-quick' },
    { weight: Math.min(0, -atSpeed), reason: 'starts-at-speed' },
  ];
  // A forefoot that stays where it is speaks for a raise all the more, the less there is left to explain.
  const calm = unexplained === undefined ? 0 : Math.max(0, Math.min(2, 2 * (1 - unexplained / shaking)));
  const worst = terms.reduce((a, b) => (b.weight < a.weight ? b : a));
  const physical = calm + terms.reduce((sum, term) => sum + term.weight, 0);
  // In a brisk set the tempo speaks against no repetition: it is that of the set, which stands or falls as a whole.
  const tempo = tempoEvidence(candidate) - Math.min(0, habits.tempo ?? 0);
  return { weight: physical + tempo, reason: worst.reason, physical };
}

/** Log-normal density of a duration, up to a factor that is the same for all: logarithm of it. */
function logDensity(durationS: number, usualS: number, spread: number): number {
  return -0.5 * (Math.log(durationS / usualS) / spread) ** 2 - Math.log(spread);
}

/**
 * Log-likelihood ratio for a raise, over a step or a knock, by the time the two ways take and the time spent high:
 * raises centre at 0.45 s from 10 to 90 % and at 0.95 s above half height and spread widely, a foot through the air
 * takes about 0.18 and 0.33 s. All are log-normal.
 *
 * @param candidate - the bump [SI]
 * @returns between -3 and 3 [-]
 *
 * Source: ours
 */
export function tempoEvidence({ upS, downS, highS }: Candidate): number {
  const wayS = Math.sqrt(upS * downS);
  const raise = logDensity(wayS, 0.45, 0.6) + logDensity(highS, 0.95, 0.55);
  const step = logDensity(wayS, 0.18, 0.4) + logDensity(highS, 0.33, 0.35);
  // the two durations say much the same: half of what they say together
  return Math.max(-3, Math.min(3, (raise - step) / 2));
}
