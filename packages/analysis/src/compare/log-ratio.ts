import type { Bounded } from '../agreement/bounds.ts';
import { requireRange } from '../check.ts';
import { normalCdf } from '../signal/normal.ts';

/** standard uncertainties on each side of a 95 % interval */
const REACH = 1.96;

/** One value over another one, on the log scale. */
export interface LogRatio extends Bounded {
  /** standard uncertainty of the natural logarithm of the ratio [-] */
  readonly logU: number;
}

/**
 * Ratio of two positive values with its 95 % interval: ln R +- 1.96 sqrt((u_a/a)^2 + (u_b/b)^2), errors taken as independent.
 * Swapping the values inverts the ratio and its interval; a common scale or unit changes nothing.
 *
 * @param top - the value above the line, > 0 [unit of top]
 * @param topU - its standard uncertainty, >= 0 [unit of top]
 * @param bottom - the value below the line, > 0 [unit of top]
 * @param bottomU - its standard uncertainty, >= 0 [unit of top]
 * @returns ratio, bounds, and standard uncertainty of its logarithm [-]
 * @throws {@link InputError} `out-of-range` for a value that is not above 0 or an uncertainty below 0
 *
 * Source: definition; top over bottom, involved over uninvolved: Silbernagel (2010), Knee Surg Sports Traumatol Arthrosc 18:258;
 * standard uncertainty of a logarithm: JCGM 100:2008, 5.1.2
 */
export function logRatio(top: number, topU: number, bottom: number, bottomU: number): LogRatio {
  requireRange(top, top > 0, 'top', '> 0');
  requireRange(bottom, bottom > 0, 'bottom', '> 0');
  requireRange(topU, topU >= 0, 'topU', '>= 0');
  requireRange(bottomU, bottomU >= 0, 'bottomU', '>= 0');
  return within(top / bottom, Math.hypot(topU / top, bottomU / bottom));
}

function within(value: number, logU: number): LogRatio {
  return { value, low: value * Math.exp(-REACH * logU), high: value * Math.exp(REACH * logU), logU };
}

/**
 * A ratio with the 95 % interval that the standard error of its logarithm gives: ln R +- 1.96 u.
 *
 * @param value - the ratio, > 0 [-]
 * @param logU - standard error of its natural logarithm, >= 0 [-]
 * @returns ratio, bounds, and the standard error again [-]
 * @throws {@link InputError} `out-of-range` for a ratio that is not above 0 or an error below 0
 *
 * Source: definition
 */
export function boundedRatio(value: number, logU: number): LogRatio {
  requireRange(value, value > 0, 'value', '> 0');
  requireRange(logU, logU >= 0, 'logU', '>= 0');
  return within(value, logU);
}

/**
 * Probability that the true ratio lies under a line, by the normal model on the log scale and no prior.
 *
 * @param ratio - the ratio [-]
 * @param line - the line, > 0 [-]
 * @returns probability; without any uncertainty 0 or 1, and 0.5 on the line itself [-]
 * @throws {@link InputError} `out-of-range` for a line that is not above 0
 *
 * Source: definition
 */
export function probabilityBelow(ratio: LogRatio, line: number): number {
  requireRange(line, line > 0, 'line', '> 0');
  const distance = Math.log(line / ratio.value);
  if (ratio.logU === 0) return distance === 0 ? 0.5 : distance > 0 ? 1 : 0;
  return normalCdf(Math.max(-37, Math.min(37, distance / ratio.logU)));
}

/**
 * Difference of two values with its 95 % interval, errors taken as independent.
 *
 * @param top - the one value [unit of top]
 * @param topU - its standard uncertainty, >= 0 [unit of top]
 * @param bottom - the value taken away [unit of top]
 * @param bottomU - its standard uncertainty, >= 0 [unit of top]
 * @returns top minus bottom with bounds [unit of top]
 * @throws {@link InputError} `out-of-range` for an uncertainty below 0 or a value that is not finite
 *
 * Source: definition; JCGM 100:2008, 5.1.2
 */
export function boundedDifference(top: number, topU: number, bottom: number, bottomU: number): Bounded {
  requireRange(top, true, 'top', 'a finite number');
  requireRange(bottom, true, 'bottom', 'a finite number');
  requireRange(topU, topU >= 0, 'topU', '>= 0');
  requireRange(bottomU, bottomU >= 0, 'bottomU', '>= 0');
  const value = top - bottom;
  const reach = REACH * Math.hypot(topU, bottomU);
  return { value, low: value - reach, high: value + reach };
}
