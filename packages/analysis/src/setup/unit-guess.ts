import { median, quantile } from '../signal/order-statistics.ts';
import type { Quantity } from '../trace.ts';
import { type Guess, noGuess, type Weighed, weigh } from './guess.ts';
import { KNOWN_UNITS } from './known-units.ts';
import type { GuessRule } from './setup-settings.ts';
import type { TurnAgreement } from './turn-agreement.ts';

/** The sentence that says what a unit was told by. */
export type UnitEvidence =
  | 'standing-mass'
  | 'standing'
  | 'efforts'
  | 'gravity'
  | 'turn-of-gravity'
  | 'turn-size'
  | 'angle-size'
  | 'height-size'
  | 'torque-size'
  | 'nothing-moves';

/** Numbers of one column, or of three axes, whose unit is asked. */
export interface UnitQuestion {
  readonly quantity: Quantity;
  /** one array an axis [unit asked for] */
  readonly axes: readonly Float64Array[];
  /** force only: whether somebody stands on the sensor, or pulls at it */
  readonly load?: 'standing' | 'efforts';
  /** body mass where it is known [kg] */
  readonly bodyMassKg?: number;
  /** angular velocity only: how it goes with gravity */
  readonly agreement?: TurnAgreement | null;
}

interface Expected {
  readonly code: UnitEvidence;
  /** size that shows in the numbers [unit asked for] */
  readonly size: number;
  /** usual size [SI], and its spread between people on the log scale [-] */
  readonly usual: number;
  readonly spread: number;
}

const GRAVITY = 9.80665; // CGPM (1901), resolution 2

/** Usual sizes and their spread on the log scale; all ours unless said. */
const USUAL = {
  bodyMassKg: { usual: 75, spread: 0.25 },
  standingOfTold: { spread: 0.06 },
  effortN: { usual: 950, spread: 0.4 },
  gravity: { spread: 0.03 },
  turnRadps: { usual: 2.5, spread: 0.6 },
  angleRad: { usual: 0.6, spread: 0.6 },
  heightM: { usual: 0.08, spread: 0.4 },
  torqueNm: { usual: 90, spread: 0.6 },
} as const;

/** Log scale over which a size that fits no unit may lie, and how probable such a sensor is [-]; ours. */
const NONE = { decades: 9, prior: 0.01 };

function range(samples: Float64Array, { lowQuantile, highQuantile }: GuessRule): number {
  return quantile(samples, highQuantile) - quantile(samples, lowQuantile);
}

/** Level of the samples under load: the empty part before somebody steps on is left out [unit of samples]. */
function loadedLevel(samples: Float64Array, { highQuantile }: GuessRule): number {
  const sizes = samples.map((value) => Math.abs(value));
  const most = quantile(sizes, highQuantile);
  return median(sizes.filter((value) => value >= 0.5 * most));
}

function expectedOf(question: UnitQuestion, rule: GuessRule): Expected | null {
  const { quantity, axes, bodyMassKg } = question;
  const first = axes[0];
  switch (quantity) {
    case 'force': {
      if (question.load !== 'standing') {
        const { usual, spread } = USUAL.effortN;
        return { code: 'efforts', size: range(first, rule), usual, spread };
      }
      const size = loadedLevel(first, rule);
      const { usual, spread } = USUAL.bodyMassKg;
      return bodyMassKg === undefined
        ? { code: 'standing', size, usual: usual * GRAVITY, spread }
        : { code: 'standing-mass', size, usual: bodyMassKg * GRAVITY, spread: USUAL.standingOfTold.spread };
    }
    case 'acceleration': {
      const size = median(Float64Array.from(first, (_, i) => Math.hypot(...axes.map((axis) => axis[i]))));
      return { code: 'gravity', size, usual: GRAVITY, spread: USUAL.gravity.spread };
    }
    case 'angular-velocity': {
      const size = quantile(
        Float64Array.from(first, (_, i) => Math.hypot(...axes.map((axis) => axis[i]))),
        rule.highQuantile,
      );
      const { usual, spread } = USUAL.turnRadps;
      return { code: 'turn-size', size, usual, spread };
    }
    case 'angle':
      return {
        code: 'angle-size',
        size: range(first, rule),
        usual: USUAL.angleRad.usual,
        spread: USUAL.angleRad.spread,
      };
    case 'heel-height':
      return {
        code: 'height-size',
        size: range(first, rule),
        usual: USUAL.heightM.usual,
        spread: USUAL.heightM.spread,
      };
    case 'torque':
      return {
        code: 'torque-size',
        size: range(first, rule),
        usual: USUAL.torqueNm.usual,
        spread: USUAL.torqueNm.spread,
      };
    // a count has no unit to be guessed
    case 'tap':
      return null;
  }
}

/** Logarithm of a normal density on the log scale, of half the weight three times as wide: sizes have outliers. */
function logDensity(distance: number, spread: number): number {
  const one = (width: number): number => Math.exp(-0.5 * (distance / width) ** 2) / width;
  return Math.log((0.8 * one(spread) + 0.2 * one(3 * spread)) / Math.sqrt(2 * Math.PI));
}

function guessed(quantity: Quantity, expected: Expected, rule: GuessRule): Guess<string, UnitEvidence> {
  const { code, size, usual, spread } = expected;
  const weighed = KNOWN_UNITS[quantity].map(
    ({ ucum, toSi, prior }): Weighed<string> => [
      ucum,
      Math.log(prior) + logDensity(Math.log((size * toSi) / usual), spread),
    ],
  );
  const noneLog = Math.log(NONE.prior / (NONE.decades * Math.LN10));
  return weigh(weighed, noneLog, { code, figures: { size, usual } }, rule);
}

/**
 * The unit that numbers of a quantity are in, from their size and from what sizes people show.
 *
 * Gravity tells the unit of an accelerometer, the body weight of somebody who stands that of a platform, the turn of gravity
 * that of a gyroscope; without these the sizes that people usually reach, which leave units that lie near each other open.
 *
 * @param question - the numbers and what is known beside them, see {@link UnitQuestion} [unit asked for]
 * @param rule - when to ask, see {@link GuessRule} [-]
 * @returns the guess as a UCUM code [-]
 * @throws {@link InputError} `too-short` without samples; `not-finite`
 *
 * Source: ours; sizes of units: CGPM (1901) and the international pound of 1959
 */
export function unitGuess(question: UnitQuestion, rule: GuessRule): Guess<string, UnitEvidence> {
  const { quantity, agreement } = question;
  const ucums = KNOWN_UNITS[quantity].map(({ ucum }) => ucum);
  if (quantity === 'angular-velocity' && agreement != null && Math.abs(agreement.correlation) >= 0.8) {
    const size = Math.abs(agreement.scale);
    // the scale is itself the size of the unit: held against 1 SI unit, it is inverted
    return guessed(quantity, { code: 'turn-of-gravity', size: 1 / size, usual: 1, spread: 0.15 }, rule);
  }
  const expected = expectedOf(question, rule);
  if (expected === null || !(expected.size > 0)) {
    return noGuess(ucums, { code: 'nothing-moves', figures: {} });
  }
  return guessed(quantity, expected, rule);
}
