/** Mean of each axis over a moving window, by running sums. */
function movingMean(samples: Float64Array, half: number): Float64Array {
  const sums = new Float64Array(samples.length + 1);
  for (let i = 0; i < samples.length; i++) sums[i + 1] = sums[i] + samples[i];
  return samples.map((_, i) => {
    const from = Math.max(0, i - half);
    const to = Math.min(samples.length, i + half + 1);
    return (sums[to] - sums[from]) / (to - from);
  });
}

/**
 * Mean square of the acceleration across gravity, without its slow part.
 *
 * A body that walks or turns moves sideways as much as up; a body that rises on its toes hardly does. Gravity's direction
 * is the mean over four seconds, so no mounting of the sensor matters.
 *
 * @param axes - specific force of three axes on a regular grid [m/s2]
 * @param sampleRateHz - of the grid [Hz]
 * @param windowS - over which the square is averaged [s]
 * @returns mean square at each sample [m2/s4]
 *
 * Source: ours
 */
export function sidewaysPower(axes: readonly Float64Array[], sampleRateHz: number, windowS: number): Float64Array {
  const slow = axes.map((axis) => movingMean(axis, Math.round(2 * sampleRateHz)));
  const tilt = axes.map((axis) => movingMean(axis, Math.round(0.5 * sampleRateHz)));
  const power = new Float64Array(axes[0].length);
  for (let i = 0; i < power.length; i++) {
    let size = 0;
    let along = 0;
    let square = 0;
    for (let a = 0; a < axes.length; a++) {
      const quick = axes[a][i] - tilt[a][i];
      size += slow[a][i] ** 2;
      along += quick * slow[a][i];
      square += quick * quick;
    }
    power[i] = Math.max(0, square - (size > 0 ? (along * along) / size : 0));
  }
  return movingMean(power, Math.round((windowS * sampleRateHz) / 2));
}

/** When movement across gravity is more than a body on its toes can show. */
export interface TravelOptions {
  /** span over which power is averaged: whoever travels does so for longer than a sway lasts [s] */
  readonly travelWindowS: number;
  /** least mean square across gravity [m2/s4] */
  readonly mostSideways: number;
  /** and least share of the vertical mean square [-] */
  readonly mostSidewaysShare: number;
}

/**
 * Marks where the body travels or turns: it walks, sits down, does push-ups.
 *
 * Somebody who rises on the toes of a planted foot accelerates up and down and hardly sideways.
 *
 * @param sideways - mean square across gravity, from {@link sidewaysPower} [m2/s4]
 * @param upward - upward acceleration on the same grid [m/s2]
 * @param sampleRateHz - of the grid [Hz]
 * @param options - limits, see {@link TravelOptions} [m2/s4, -]
 * @returns 1 where sideways movement is too large to be a heel raise [-]
 *
 * Source: ours
 */
export function travelMarks(
  sideways: Float64Array,
  upward: Float64Array,
  sampleRateHz: number,
  options: TravelOptions,
): Uint8Array {
  const half = Math.round((options.travelWindowS * sampleRateHz) / 2);
  const usual = movingMean(sideways, half);
  const slow = movingMean(upward, Math.round(sampleRateHz));
  const vertical = movingMean(
    upward.map((value, i) => (value - slow[i]) ** 2),
    half,
  );
  return Uint8Array.from(usual, (power, i) =>
    power > options.mostSideways && power > options.mostSidewaysShare * vertical[i] ? 1 : 0,
  );
}
