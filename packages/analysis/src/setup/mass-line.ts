import { tQuantile } from '../agreement/distributions.ts';
import { requireRange } from '../check.ts';
import { type FittedLine, leastSquaresLine } from '../signal/line.ts';
import type { MassRule } from './setup-settings.ts';

/** A known mass and what the sensor showed under it. */
export interface MassLevel {
  readonly massKg: number;
  /** reading [unit of the sensor] */
  readonly level: number;
  readonly u: number;
}

/** Why a calibration does not hold. */
export type MassRefusal =
  /** fewer different masses than a line can be judged by */
  | 'too-few-masses'
  /** the empty sensor is not among them */
  | 'no-empty'
  /** the greatest mass is too small */
  | 'too-light'
  /** the sensor did not answer to the masses */
  | 'no-answer'
  /** one mass lies off the line through the others */
  | 'one-out-of-line'
  /** no straight line fits */
  | 'not-straight'
  /** the empty sensor showed another value afterwards */
  | 'zero-moved';

/** The line through known masses: reading = offset + slope times load. */
export interface MassCalibration {
  readonly kind: 'calibration';
  /** reading per newton, and its standard uncertainty: scatter, masses and local gravity [unit of the sensor per N] */
  readonly slope: number;
  readonly slopeU: number;
  /** reading of the empty sensor by the line, and its standard uncertainty [unit of the sensor] */
  readonly offset: number;
  readonly offsetU: number;
  /** scatter of the readings about the line; degrees of freedom are the readings less two [unit of the sensor] */
  readonly residualSd: number;
  readonly degrees: number;
  /** 95 % interval of the slope by its scatter alone [unit of the sensor per N] */
  readonly slopeLow: number;
  readonly slopeHigh: number;
  /** greatest departure from the line, and the same as a share of the greatest load [N, -] */
  readonly departureN: number;
  readonly departureShare: number;
  readonly greatestN: number;
  /** the empty sensor after the masses less before them; null when it was read only once [N] */
  readonly returnN: number | null;
  /** the reading falls when the load grows */
  readonly reversed: boolean;
}

export type MassFit =
  | MassCalibration
  | {
      readonly kind: 'refused';
      readonly reason: MassRefusal;
      readonly found: number;
      readonly allowed: number;
      /** the mass that is out of line; null for the other reasons [kg] */
      readonly massKg: number | null;
    };

interface OutOfLine {
  readonly at: number;
  readonly departureN: number;
}

/**
 * The reading that lies off the line through all others by more than their scatter explains, tested at a probability shared
 * out over the readings.
 */
function outOfLine(loads: readonly number[], levels: readonly MassLevel[], rule: MassRule): OutOfLine | null {
  const n = levels.length;
  if (n < 4) return null;
  let worst: OutOfLine | null = null;
  let most = 0;
  for (let at = 0; at < n; at++) {
    const x = loads.filter((_, i) => i !== at);
    if (x.every((value) => value === x[0])) continue;
    const y = levels.filter((_, i) => i !== at).map(({ level }) => level);
    const line = leastSquaresLine(x, y);
    const centre = x.reduce((sum, value) => sum + value, 0) / x.length;
    const squares = x.reduce((sum, value) => sum + (value - centre) ** 2, 0);
    const spread = Math.hypot(line.residualSd ?? 0, levels[at].u);
    const residual = levels[at].level - line.intercept - line.slope * loads[at];
    const scale = spread * Math.sqrt(1 + 1 / x.length + (loads[at] - centre) ** 2 / squares);
    const size = scale > 0 ? Math.abs(residual) / scale : residual === 0 ? 0 : Infinity;
    if (size > most) {
      most = size;
      worst = { at, departureN: Math.abs(residual / line.slope) };
    }
  }
  return most > tQuantile(1 - rule.strayProbability / (2 * n), n - 3) ? worst : null;
}

/** Whether the reading answers to the load at all: the line rises over its own scatter. */
function answers(line: FittedLine, greatestN: number, rule: MassRule): boolean {
  return line.slope !== 0 && Math.abs(line.slope) * greatestN > rule.answerLeast * (line.residualSd ?? 0);
}

/**
 * The straight line through readings under known masses, or the reason why it does not hold.
 *
 * Least squares of reading on load, load = mass times gravity. The slope's uncertainty joins the scatter about the line, the
 * width within which the masses are what was told, and taking standard gravity for that of the place.
 *
 * @param levels - one reading a mass in the order in which they hung, the empty sensor (0 kg) among them [kg, unit of the sensor]
 * @param gravityMps2 - gravity by which a mass becomes a load, > 0 [m/s2]
 * @param rule - limits, see {@link MassRule} [-]
 * @returns the calibration, or the refusal with its numbers [unit of the sensor per N]
 * @throws {@link InputError} `not-finite`; `out-of-range` for a mass below 0 or gravity
 *
 * Source: JCGM 100:2008 (GUM), annex H.3 (a calibration line by least squares) and 5.1.2; outlying reading: the deleted
 * residual, Cook & Weisberg (1982), Residuals and Influence in Regression, 2.2.2
 * Checked against: NIST StRD Norris; SciPy, fixtures/reference/mass-line.calibrations.json
 */
export function massLine(levels: readonly MassLevel[], gravityMps2: number, rule: MassRule): MassFit {
  requireRange(gravityMps2, gravityMps2 > 0, 'gravityMps2', 'above 0');
  for (const { massKg } of levels) requireRange(massKg, massKg >= 0, 'massKg', '0 or more');
  const refused = (reason: MassRefusal, found: number, allowed: number, massKg: number | null = null): MassFit => ({
    kind: 'refused',
    reason,
    found,
    allowed,
    massKg,
  });
  const masses = new Set(levels.map(({ massKg }) => massKg));
  if (!masses.has(0)) return refused('no-empty', 0, 1);
  if (masses.size < rule.massesLeast) return refused('too-few-masses', masses.size, rule.massesLeast);
  const greatestKg = Math.max(...masses);
  if (greatestKg < rule.greatestLeastKg) return refused('too-light', greatestKg, rule.greatestLeastKg);
  const loads = levels.map(({ massKg }) => massKg * gravityMps2);
  const greatestN = greatestKg * gravityMps2;
  const line = leastSquaresLine(
    loads,
    levels.map(({ level }) => level),
  );
  if (line.slope === 0) return refused('no-answer', 0, 1);
  const departures = levels.map(({ level }, i) => Math.abs((level - line.intercept) / line.slope - loads[i]));
  const departureN = Math.max(...departures);
  const departureShare = departureN / greatestN;
  if (departureShare > rule.linearityMost) {
    const stray = outOfLine(loads, levels, rule);
    if (stray !== null) {
      const allowedN = rule.linearityMost * greatestN;
      return refused('one-out-of-line', stray.departureN, allowedN, levels[stray.at].massKg);
    }
    if (!answers(line, greatestN, rule)) return refused('no-answer', departureShare, rule.linearityMost);
    return refused('not-straight', departureShare, rule.linearityMost);
  }
  const empty = levels.filter(({ massKg }) => massKg === 0);
  const returnN = empty.length < 2 ? null : (empty[empty.length - 1].level - empty[0].level) / line.slope;
  if (returnN !== null && Math.abs(returnN) > rule.returnMostN) {
    return refused('zero-moved', Math.abs(returnN), rule.returnMostN);
  }
  const massRelativeU = rule.massHalfKg / Math.sqrt(3) / greatestKg;
  const degrees = levels.length - 2;
  const scatterU = line.slopeU ?? 0;
  const reach = tQuantile(0.975, degrees) * scatterU;
  return {
    kind: 'calibration',
    slope: line.slope,
    slopeU: Math.hypot(scatterU, line.slope * massRelativeU, line.slope * rule.gravityRelativeU),
    offset: line.intercept,
    offsetU: line.interceptU ?? 0,
    residualSd: line.residualSd ?? 0,
    degrees,
    slopeLow: line.slope - reach,
    slopeHigh: line.slope + reach,
    departureN,
    departureShare,
    greatestN,
    returnN,
    reversed: line.slope < 0,
  };
}
