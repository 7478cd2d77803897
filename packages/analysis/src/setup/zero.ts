import { requireRange } from '../check.ts';
import type { ZeroRule } from './setup-settings.ts';
import { type Stretch, stillLevel } from './still-level.ts';

/** An earlier zero of the same sensor. */
export interface LastZero {
  readonly level: number;
  readonly u: number;
}

/** What is known of the sensor whose zero is taken. */
export interface ZeroFacts {
  readonly quantity: 'force' | 'torque';
  /** load that the sensor is made for, from its description; null when it is not told [N or N.m] */
  readonly capacity: number | null;
  readonly last: LastZero | null;
}

/** Why a zero was not taken. */
export type ZeroRefusal =
  /** less than the least length, or samples too far apart for a block */
  | 'too-short'
  /** a hole in the samples */
  | 'gap'
  /** the level wanders */
  | 'moving'
  /** single samples scatter */
  | 'noisy'
  /** more than an empty sensor can show */
  | 'loaded';

/** What became of the level of the empty sensor since its last zero. */
export interface ZeroDrift {
  readonly change: number;
  readonly u: number;
  /** whether the change is so large that forces since the last zero are to be seen with it */
  readonly verdict: 'plain' | 'to-mind';
}

export type ZeroTaken =
  | {
      readonly kind: 'zero';
      readonly level: number;
      readonly u: number;
      readonly noise: number;
      /** null when there was no zero before */
      readonly drift: ZeroDrift | null;
      /** what the emptiness of the sensor was judged by */
      readonly emptyBy: EmptyBy;
      readonly emptyMost: number;
    }
  | {
      readonly kind: 'refused';
      readonly reason: ZeroRefusal;
      /** what was found and what is allowed: seconds for a length or a hole, else the unit of the quantity */
      readonly found: number;
      readonly allowed: number;
      /** what the emptiness was judged by; null for the other reasons */
      readonly emptyBy: EmptyBy | null;
    };

/** What an empty sensor can show was taken from this. */
export type EmptyBy = 'last-zero' | 'capacity' | 'quantity';

/**
 * The zero of an empty sensor, or the reason why it is not taken.
 *
 * It is refused under load: where a last zero is known, a level further from it than a sensor drifts; else a level above what
 * an empty sensor of this capacity shows; else, above what is less than a resting leg. It is refused when the level moves,
 * when single samples scatter, and over a hole.
 *
 * @param stretch - newest samples of the sensor, in time order [s, N or N.m]
 * @param facts - quantity, capacity and last zero [N or N.m]
 * @param rule - lengths and limits, see {@link ZeroRule} [-]
 * @returns the zero with its uncertainty and the drift since the last one, or the refusal with its numbers [N or N.m]
 * @throws {@link InputError} as {@link stillLevel}; `out-of-range` for a capacity that is not above 0
 *
 * Source: ours; 5 and 15 N are common practice, no source
 */
export function takeZero(stretch: Stretch, facts: ZeroFacts, rule: ZeroRule): ZeroTaken {
  const { capacity, last, quantity } = facts;
  if (capacity !== null) requireRange(capacity, capacity > 0, 'capacity', 'a capacity above 0');
  const limits = rule.limits[quantity];
  const refused = (reason: ZeroRefusal, found: number, allowed: number, emptyBy: EmptyBy | null = null): ZeroTaken => ({
    kind: 'refused',
    reason,
    found,
    allowed,
    emptyBy,
  });
  const { timesS } = stretch;
  const lengthS = timesS.length < 2 ? 0 : timesS[timesS.length - 1] - timesS[0];
  if (timesS.length < 2) return refused('too-short', lengthS, rule.level.leastS);
  const still = stillLevel(stretch, rule.level);
  if (still === null) return refused('too-short', lengthS, rule.level.leastS);
  if (still.longestGapS > rule.level.gapS) return refused('gap', still.longestGapS, rule.level.gapS);
  if (still.noise > limits.noiseMost) return refused('noisy', still.noise, limits.noiseMost);
  // scatter of single samples moves the means of blocks a little: that is no movement of the load
  if (still.range > limits.moveMost) return refused('moving', still.range, limits.moveMost);
  const byCapacity = (share: number): number => (capacity === null ? 0 : share * capacity);
  const emptyBy: EmptyBy = last !== null ? 'last-zero' : capacity !== null ? 'capacity' : 'quantity';
  const emptyMost = {
    'last-zero': Math.max(limits.driftMost, byCapacity(rule.driftCapacityShare)),
    capacity: Math.max(limits.driftMost, byCapacity(rule.emptyCapacityShare)),
    quantity: limits.emptyMost,
  }[emptyBy];
  const away = Math.abs(still.level - (last?.level ?? 0));
  if (away > emptyMost) return refused('loaded', away, emptyMost, emptyBy);
  const change = last === null ? 0 : still.level - last.level;
  return {
    kind: 'zero',
    level: still.level,
    u: still.u,
    noise: still.noise,
    drift:
      last === null
        ? null
        : {
            change,
            u: Math.hypot(still.u, last.u),
            verdict: Math.abs(change) > limits.driftPlain ? 'to-mind' : 'plain',
          },
    emptyBy,
    emptyMost,
  };
}
