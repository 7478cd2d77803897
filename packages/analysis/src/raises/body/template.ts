/** The acceleration of one repetition of unit rise, up, hold and down, on the model grid. */
export interface Template {
  /** mean acceleration in each cell of the grid, for a rise of 1 m [m/s2] */
  readonly acceleration: Float64Array;
  readonly cells: number;
  readonly durationS: number;
  /** share of the duration spent at the top [-] */
  readonly holdShare: number;
  /** fall time over rise time [-] */
  readonly fallRatio: number;
  /** whether the top may dip: cells from openFrom up to openTo then hold any other movement */
  readonly dip: boolean;
  readonly openFrom: number;
  readonly openTo: number;
  /** whether its shape was learnt from the set instead of laid on the grid of shapes */
  readonly shared?: boolean;
  /** from the first cell boundary: leaving the bottom, reaching and leaving the top, back at the bottom [s] */
  readonly startS: number;
  /** greatest height: the middle of the hold, or the first of two tops [s] */
  readonly topS: number;
  readonly highFromS: number;
  readonly highToS: number;
  readonly endS: number;
}

/** Shape of a repetition before it is laid on a grid. */
export interface Shape {
  readonly durationS: number;
  readonly holdShare: number;
  readonly fallRatio: number;
  /** time at the top before a dip, when the top may dip; undefined when it may not [s] */
  readonly steadyS?: number;
  /** whether rise and fall go in two phases with a slower moment between; in one when left out */
  readonly twoPhaseRise?: boolean;
  readonly twoPhaseFall?: boolean;
  /** whether both moves start and stop abruptly, as half cosines: swinging from one into the next */
  readonly swinging?: boolean;
}

/**
 * How much of the rise comes early: the ankle turns about the forefoot, so its rise is the sine of an angle that starts
 * near 28 degrees and grows by 25 to 40; the way z over the turned share w is near w + ARC w (1 - w), 0.18 to 0.39.
 */
const ARC = 0.3;

/** Speed of a rise of unit height in unit time: a smooth turn 10 s^3 - 15 s^4 + 6 s^5 seen through the arc of the ankle. */
function smoothSpeed(share: number): number {
  if (share <= 0 || share >= 1) return 0;
  const turned = share ** 3 * (10 + share * (-15 + 6 * share));
  return 30 * share * share * (1 - share) * (1 - share) * (1 + ARC * (1 - 2 * turned));
}

/** Speed of a half cosine: it starts and stops with its greatest acceleration. */
function swingingSpeed(share: number): number {
  return share <= 0 || share >= 1 ? 0 : (Math.PI / 2) * Math.sin(Math.PI * share);
}

/** The same way in two halves that overlap by a fifth of the time: people who start high on the heel do so. */
function twoPhaseSpeed(share: number): number {
  return (smoothSpeed(share / 0.6) + smoothSpeed((share - 0.4) / 0.6)) / 1.2;
}

/**
 * One repetition of unit rise as mean accelerations in the cells of a regular grid.
 *
 * Rise and fall are minimum-jerk moves; between them the top is held, or left open to any
 * brief movement. Mean acceleration in a cell is the change of speed over it, so the cells sum to zero: a constant error of the sensor drops
 * out, and with zero net displacement a linear drift as well.
 *
 * @param shape - duration, share held, fall over rise, time before a dip, see {@link Shape} [s, -]
 * @param rateHz - cells per second, > 0 [Hz]
 * @returns accelerations for a rise of 1 m and the times of its parts from the first cell boundary [m/s2, s]
 *
 * Source: Flash and Hogan (1985), The coordination of arm movements, J Neurosci 5:1688-1703 (minimum jerk); the rest ours
 */
export function repetitionTemplate(shape: Shape, rateHz: number): Template {
  const { durationS, holdShare, fallRatio, steadyS } = shape;
  const holdS = holdShare * durationS;
  const riseS = (durationS - holdS) / (1 + fallRatio);
  const fallS = durationS - holdS - riseS;
  const cells = Math.max(2, Math.ceil(durationS * rateHz - 1e-9));
  const startS = (cells / rateHz - durationS) / 2;
  const highFromS = startS + riseS;
  const highToS = highFromS + holdS;
  const endS = startS + durationS;
  const plain = shape.swinging === true ? swingingSpeed : smoothSpeed;
  const up = shape.twoPhaseRise === true ? twoPhaseSpeed : plain;
  const down = shape.twoPhaseFall === true ? twoPhaseSpeed : plain;
  const speedAt = (timeS: number): number => {
    if (timeS < highFromS) return up((timeS - startS) / riseS) / riseS;
    if (timeS > highToS) return -down((endS - timeS) / fallS) / fallS;
    return 0;
  };
  const acceleration = new Float64Array(cells);
  for (let cell = 0; cell < cells; cell++) {
    acceleration[cell] = (speedAt((cell + 1) / rateHz) - speedAt(cell / rateHz)) * rateHz;
  }
  const dip = steadyS !== undefined;
  const topS = dip ? highFromS + Math.min(steadyS, holdS) / 2 : (highFromS + highToS) / 2;
  const openFrom = dip ? Math.ceil(highFromS * rateHz) : 0;
  const openTo = dip ? Math.max(openFrom, Math.floor(highToS * rateHz)) : 0;
  const times = { startS, topS, highFromS, highToS, endS };
  return { acceleration, cells, durationS, holdShare, fallRatio, dip, openFrom, openTo, ...times };
}
