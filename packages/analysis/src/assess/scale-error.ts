import type { Figure } from '../efforts/figure.ts';
import type { GrossAndNet } from '../efforts/isometric-effort.ts';

/**
 * The error of the line that readings are counted by, which all forces of a recording share: force = (reading - zero) / slope.
 * What is not known is 0 here and said in the report.
 */
export interface ScaleError {
  /** relative standard uncertainty of the slope, >= 0 [-] */
  readonly relativeU: number;
  /** standard uncertainty of the zero, >= 0 [unit of the forces] */
  readonly zeroU: number;
  /** correlation of slope and zero for forces of the sign of those that carry the error, -1 to 1 [-] */
  readonly correlation: number;
}

/**
 * A figure that no zero enters, such as a net force, a rate or an impulse, with the error of the slope in its uncertainty: the
 * law of propagation for a factor that is independent of the figure's own error.
 *
 * @param figure - with its own standard uncertainty [unit of figure]
 * @param relativeU - relative standard uncertainty of the slope, >= 0 [-]
 * @returns the same value with the whole uncertainty [unit of figure]
 *
 * Source: JCGM 100:2008, 5.1.2, equations (10) and (12)
 */
export function withSlopeU(figure: Figure, relativeU: number): Figure {
  return { value: figure.value, u: Math.hypot(figure.u, relativeU * figure.value) };
}

/**
 * A force as the sensor reads it, with the error of slope and zero in its uncertainty. Both come from one line through the same
 * readings, so that their errors are not independent: u2 = own2 + (r F)2 + z2 + 2 c r F z.
 *
 * @param figure - gross force with its own standard uncertainty [unit of figure]
 * @param scale - see {@link ScaleError} [-, unit of figure]
 * @returns the same value with the whole uncertainty [unit of figure]
 *
 * Source: JCGM 100:2008, 5.2.2, equations (13) and (16); a calibration line: annex H.3
 */
export function withScaleU(figure: Figure, { relativeU, zeroU, correlation }: ScaleError): Figure {
  const ofSlope = relativeU * figure.value;
  const shared = ofSlope ** 2 + zeroU ** 2 + 2 * correlation * ofSlope * zeroU;
  // rounding may leave a hair below zero where slope and zero make up for each other
  return { value: figure.value, u: Math.sqrt(figure.u ** 2 + Math.max(0, shared)) };
}

/**
 * The same for a force that is given gross and net: the zero cancels in the net one.
 *
 * @param force - gross and net [N or N.m]
 * @param scale - see {@link ScaleError} [-, N or N.m]
 * @returns the same values with the whole uncertainty [N or N.m]
 *
 * Source: JCGM 100:2008, 5.1.2 and 5.2.2
 */
export function withScaleUOfBoth(force: GrossAndNet, scale: ScaleError): GrossAndNet {
  return { gross: withScaleU(force.gross, scale), net: withSlopeU(force.net, scale.relativeU) };
}
