/**
 * How a smooth move goes from one posture to another: share of the way against share of the time, tabulated. Both run
 * from 0 to 1, and the speed is zero at either end.
 */
export interface MoveShape {
  /** share of the way at equal steps of time, both ends included [-] */
  readonly way: Float64Array;
  /** speed at the same steps: shares of the way per share of the time [-] */
  readonly speed: Float64Array;
}

/**
 * Which shape: with the share u of the time and x = 2 u - 1 the speed goes as
 * u^start (1 - u)^end (1 + tilt x + spread x^2), never below a fiftieth of the first two factors.
 */
export interface ShapeExponents {
  /** how softly the move begins: 1 at once, 2 like minimum jerk, 3 very softly [-] */
  readonly start: number;
  /** how softly it ends [-] */
  readonly end: number;
  /** 0 for one stroke; greater for a long even one or, beyond about 4, for two strokes [-] */
  readonly spread: number;
  /** above 0 the later of two strokes is the greater one [-] */
  readonly tilt: number;
}

const steps = 128;

/** Logarithms of the shares of the time. */
const logs = Float64Array.from({ length: steps + 1 }, (_, i) => Math.log(i / steps));

/** Minimum jerk: speed 30 u^2 (1 - u)^2. */
export const minimumJerk: ShapeExponents = { start: 2, end: 2, spread: 0, tilt: 0 };

/**
 * How softly a move begins and ends: u^start (1 - u)^end at equal steps of time.
 *
 * @param start - exponent of the start [-]
 * @param end - exponent of the end [-]
 * @returns the factor at each step, both ends included [-]
 *
 * Source: definition
 */
export function softEnds(start: number, end: number): Float64Array {
  const soft = new Float64Array(steps + 1);
  for (let i = 1; i < steps; i++) soft[i] = Math.exp(start * logs[i] + end * logs[steps - i]);
  return soft;
}

/** Speed as it goes, and the share of the way, both not yet made whole; returns the length of that way. */
function goneWith(
  soft: Float64Array,
  { spread, tilt }: Pick<ShapeExponents, 'spread' | 'tilt'>,
  way: Float64Array,
  speed: Float64Array,
): number {
  for (let i = 1; i < steps; i++) {
    const x = (2 * i) / steps - 1;
    speed[i] = soft[i] * Math.max(0.02, 1 + tilt * x + spread * x * x);
  }
  for (let i = 1; i <= steps; i++) way[i] = way[i - 1] + (speed[i] + speed[i - 1]) / 2 / steps;
  return way[steps];
}

/**
 * Shape of a move, tabulated.
 *
 * The family holds minimum jerk (2, 2, 0) and minimum snap (3, 3, 0) exactly and a half cosine to within 2 % at about
 * (1, 1, 0); unequal exponents put the greatest speed early or late.
 *
 * @param exponents - which member of the family, see {@link ShapeExponents} [-]
 * @param soft - from {@link softEnds} by its exponents, where it is known already [-]
 * @returns way and speed [-]
 *
 * Source: Flash & Hogan (1985), J Neurosci 5:1688-1703 (minimum jerk); the family of beta-shaped speeds around it: ours
 */
export function moveShape(exponents: ShapeExponents, soft = softEnds(exponents.start, exponents.end)): MoveShape {
  const speed = new Float64Array(steps + 1);
  const way = new Float64Array(steps + 1);
  const whole = goneWith(soft, exponents, way, speed);
  for (let i = 0; i <= steps; i++) {
    way[i] = way[i] / whole;
    speed[i] = speed[i] / whole;
  }
  return { way, speed };
}

const passing = new Float64Array(steps + 1);

/**
 * How the way of a shape changes when its exponents do, by a small difference.
 *
 * @param from - way of the shape [-]
 * @param to - spread and tilt of the other shape [-]
 * @param soft - from {@link softEnds} by the exponents of the other shape [-]
 * @param step - how far the two are apart [-]
 * @returns difference of the ways over the step, tabulated like them [-]
 *
 * Source: definition
 */
export function waySlope(
  from: Float64Array,
  to: Pick<ShapeExponents, 'spread' | 'tilt'>,
  soft: Float64Array,
  step: number,
): Float64Array {
  const slope = new Float64Array(steps + 1);
  const whole = goneWith(soft, to, slope, passing);
  for (let i = 0; i <= steps; i++) slope[i] = (slope[i] / whole - from[i]) / step;
  return slope;
}

/**
 * Value of a tabulated shape, by straight lines between its steps.
 *
 * @param table - `way` or `speed` of a shape [-]
 * @param time - share of the time gone, 0 to 1 [-]
 * @returns the value [-]
 *
 * Source: definition
 */
export function readShape(table: Float64Array, time: number): number {
  const place = time * steps;
  const left = Math.min(steps - 1, Math.floor(place));
  return table[left] + (place - left) * (table[left + 1] - table[left]);
}
