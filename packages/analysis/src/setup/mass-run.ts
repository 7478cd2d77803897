import { type MassFit, massLine } from './mass-line.ts';
import type { MassRule } from './setup-settings.ts';
import type { Stretch } from './still-level.ts';
import { type StillStretch, stillStretches } from './still-stretches.ts';

/** A recording of masses hung one after the other, fitted; or what kept it from being read. */
export type MassRun =
  | { readonly kind: 'fitted'; readonly stretches: readonly StillStretch[]; readonly fit: MassFit }
  /** not as many still stretches as masses were told */
  | { readonly kind: 'not-still'; readonly found: number; readonly told: number };

/**
 * The calibration that a recording of known masses gives, hung one after the other, each until it hangs still.
 *
 * @param recording - samples of the whole run [s, unit of the sensor]
 * @param massesKg - the masses in the order in which they hung, 0 for the empty sensor [kg]
 * @param gravityMps2 - gravity, > 0 [m/s2]
 * @param rule - limits, see {@link MassRule} [-]
 * @returns the fit; or how many still stretches were found for how many masses [unit of the sensor per N]
 * @throws {@link InputError} as {@link massLine} and {@link stillStretches}
 *
 * Source: ours
 */
export function massRun(recording: Stretch, massesKg: readonly number[], gravityMps2: number, rule: MassRule): MassRun {
  const stretches = stillStretches(recording, rule);
  if (stretches.length !== massesKg.length) {
    return { kind: 'not-still', found: stretches.length, told: massesKg.length };
  }
  const levels = stretches.map(({ level, u }, i) => ({ massKg: massesKg[i], level, u }));
  return { kind: 'fitted', stretches, fit: massLine(levels, gravityMps2, rule) };
}
