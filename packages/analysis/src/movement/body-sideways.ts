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
