import type { RestLoadRule } from './setup-settings.ts';
import { type Stretch, stillLevel } from './still-level.ts';
import type { LastZero } from './zero.ts';

/** Why the weight of the limb was not read. */
export type RestLoadRefusal =
  /** the sensor was never zeroed: a level says nothing of a load */
  | 'no-zero'
  | 'too-short'
  | 'gap'
  /** the limb is not at rest */
  | 'moving'
  /** nothing lies on the sensor */
  | 'nothing-on-it'
  /** more than a limb at rest */
  | 'too-much';

export type RestLoad =
  | { readonly kind: 'rest-load'; readonly loadN: number; readonly uN: number; readonly spanS: number }
  | {
      readonly kind: 'refused';
      readonly reason: RestLoadRefusal;
      /** seconds for a length or a hole, else newtons; null where there is no number */
      readonly found: number | null;
      readonly allowed: number | null;
    };

/**
 * Weight of a limb that rests on the sensor before a seated push, above the zero of the empty sensor.
 *
 * @param stretch - newest samples while the limb rests [s, N]
 * @param zero - the zero of the empty sensor; null when none was taken [N]
 * @param sign - which way the reading goes under load [-]
 * @param rule - lengths and limits, see {@link RestLoadRule} [-]
 * @returns the load with its standard uncertainty, or the refusal with its numbers [N]
 * @throws {@link InputError} as {@link stillLevel}
 *
 * Source: definition; uncertainties by JCGM 100:2008 5.1.2
 */
export function restLoadOn(stretch: Stretch, zero: LastZero | null, sign: 1 | -1, rule: RestLoadRule): RestLoad {
  const refused = (reason: RestLoadRefusal, found: number | null, allowed: number | null): RestLoad => ({
    kind: 'refused',
    reason,
    found,
    allowed,
  });
  if (zero === null) return refused('no-zero', null, null);
  const still = stretch.timesS.length < 2 ? null : stillLevel(stretch, rule.level);
  if (still === null) {
    const { timesS } = stretch;
    return refused('too-short', timesS.length < 2 ? 0 : timesS[timesS.length - 1] - timesS[0], rule.level.leastS);
  }
  if (still.longestGapS > rule.level.gapS) return refused('gap', still.longestGapS, rule.level.gapS);
  if (still.range > rule.moveMostN) return refused('moving', still.range, rule.moveMostN);
  const loadN = sign * (still.level - zero.level);
  if (loadN < rule.leastN) return refused('nothing-on-it', loadN, rule.leastN);
  if (loadN > rule.mostN) return refused('too-much', loadN, rule.mostN);
  return { kind: 'rest-load', loadN, uN: Math.hypot(still.u, zero.u), spanS: still.spanS };
}
