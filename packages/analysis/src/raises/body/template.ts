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
  /** depth of the dip at the top as a share of the rise; 0 for none [-] */
  readonly dip: number;
  /** from the first cell boundary: leaving the bottom, reaching and leaving the top, back at the bottom [s] */
  readonly startS: number;
  readonly highFromS: number;
  readonly highToS: number;
  readonly endS: number;
}

/** Shape of a repetition before it is laid on a grid. */
export interface Shape {
  readonly durationS: number;
  readonly holdShare: number;
  readonly fallRatio: number;
  readonly dip: number;
}

/** Speed of a smooth move of unit length in unit time: the derivative of 10 s^3 - 15 s^4 + 6 s^5. */
function smoothSpeed(share: number): number {
  return share <= 0 || share >= 1 ? 0 : 30 * share * share * (1 - share) * (1 - share);
}

/**
 * One repetition of unit rise as mean accelerations in the cells of a regular grid.
 *
 * Rise and fall are minimum-jerk moves; between them the top is held, or sinks and returns by a cosine dip. Mean
 * acceleration in a cell is the change of speed over it, so the cells sum to zero: a constant error of the sensor drops
 * out, and with zero net displacement a linear drift as well.
 *
 * @param shape - duration, share held, fall over rise, dip, see {@link Shape} [s, -]
 * @param rateHz - cells per second, > 0 [Hz]
 * @returns accelerations for a rise of 1 m and the times of its parts from the first cell boundary [m/s2, s]
 *
 * Source: Flash and Hogan (1985), The coordination of arm movements, J Neurosci 5:1688-1703 (minimum jerk); the rest ours
 */
export function repetitionTemplate(shape: Shape, rateHz: number): Template {
  const { durationS, holdShare, fallRatio, dip } = shape;
  const holdS = holdShare * durationS;
  const riseS = (durationS - holdS) / (1 + fallRatio);
  const fallS = durationS - holdS - riseS;
  const cells = Math.max(2, Math.ceil(durationS * rateHz - 1e-9));
  const startS = (cells / rateHz - durationS) / 2;
  const highFromS = startS + riseS;
  const highToS = highFromS + holdS;
  const speedAt = (timeS: number): number => {
    if (timeS < highFromS) return smoothSpeed((timeS - startS) / riseS) / riseS;
    if (timeS > highToS) return -smoothSpeed((timeS - highToS) / fallS) / fallS;
    if (dip === 0 || holdS === 0) return 0;
    return (-dip * Math.PI * Math.sin((2 * Math.PI * (timeS - highFromS)) / holdS)) / holdS;
  };
  const acceleration = new Float64Array(cells);
  for (let cell = 0; cell < cells; cell++) {
    acceleration[cell] = (speedAt((cell + 1) / rateHz) - speedAt(cell / rateHz)) * rateHz;
  }
  const endS = startS + durationS;
  return { acceleration, cells, durationS, holdShare, fallRatio, dip, startS, highFromS, highToS, endS };
}
