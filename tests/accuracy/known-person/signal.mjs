// What the observer hears of a set: vertical acceleration of the body, mean over each step of an even grid, whitened.

/** Length of the whitening filter [s]; what is left of the wobble's memory after it is nothing. */
const filterS = 0.6;

/** Points of a step over which a covariance is averaged. */
const pointsOfStep = 8;

/** Variance that keeps the filter possible where a sensor has next to no noise of its own [(m/s2)2]. */
const leastVariance = 1e-6;

const gravity = 9.80665;

/** Acceleration of the body as the sensor tells it: length of the specific force, or force over mass, less gravity [m/s2]. */
export function bodyAcceleration(placement, { trace, subject }) {
  const { timesS, channels } = trace.groups[0];
  const [x, y, z] = channels.map(({ samples }) => samples);
  const values =
    placement === 'trunk'
      ? x.map((value, i) => Math.hypot(value, y[i], z[i]) - gravity)
      : x.map((value) => value / subject.bodyMassKg - gravity);
  return { timesS, values };
}

/** Means over steps that lie about the multiples of `stepS`, of the line through the samples. */
export function onGrid({ timesS, values }, stepS) {
  const last = timesS.length - 1;
  const area = new Float64Array(last + 1);
  for (let i = 1; i <= last; i++) {
    area[i] = area[i - 1] + ((timesS[i] - timesS[i - 1]) * (values[i] + values[i - 1])) / 2;
  }
  let i = 0;
  const areaUntil = (timeS) => {
    while (i < last - 1 && timesS[i + 1] < timeS) i++;
    const since = Math.min(timesS[last], Math.max(timesS[0], timeS)) - timesS[i];
    const slope = (values[i + 1] - values[i]) / (timesS[i + 1] - timesS[i]);
    return area[i] + since * (values[i] + (since * slope) / 2);
  };
  const count = Math.floor(timesS[last] / stepS);
  let before = areaUntil(-stepS / 2);
  return Float64Array.from({ length: count }, (_, k) => {
    const after = areaUntil((k + 0.5) * stepS);
    const mean = (after - before) / stepS;
    before = after;
    return mean;
  });
}

/** Autocovariance, over the steps of the grid, of all that hides the repetitions: wobble and the noise of the sensor. */
export function noiseCovariance(placement, { trace, subject, faults }, stepS, count) {
  const { timesS } = trace.groups[0];
  const rateHz = (timesS.length - 1) / (timesS[timesS.length - 1] - timesS[0]);
  const density = placement === 'trunk' ? faults.trunkWobble : faults.platformWobble;
  const white =
    placement === 'trunk'
      ? faults.accelerometerNoise ** 2 / 2
      : (faults.forceNoiseN / subject.bodyMassKg) ** 2 / rateHz;
  // white noise through two equal poles: one-sided density times noise bandwidth, and (1 + a t) exp(-a t)
  const variance = density ** 2 * ((Math.PI * faults.wobbleCornerHz) / 4);
  const at = (lagS) => {
    const a = 2 * Math.PI * faults.wobbleCornerHz * Math.abs(lagS);
    return variance * (1 + a) * Math.exp(-a);
  };
  return Float64Array.from({ length: count }, (_, lag) => {
    let sum = 0;
    for (let d = 1 - pointsOfStep; d < pointsOfStep; d++) {
      sum += ((pointsOfStep - Math.abs(d)) / pointsOfStep ** 2) * at((lag + d / pointsOfStep) * stepS);
    }
    return sum + (lag === 0 ? white / stepS + leastVariance : 0);
  });
}

/** Filter that leaves of such noise what its past does not tell, with variance 1; Levinson (1946), Durbin (1960). */
export function whiteningFilter(covariance) {
  let filter = [1];
  let error = covariance[0];
  for (let k = 1; k < covariance.length; k++) {
    const sum = filter.reduce((all, value, i) => all + value * covariance[k - i], 0);
    const reflection = -sum / error;
    const longer = [...filter, 0];
    filter = longer.map((value, i) => value + reflection * longer[k - i]);
    error *= 1 - reflection * reflection;
  }
  return Float64Array.from(filter, (value) => value / Math.sqrt(error));
}

/** Values through the filter; what came before the first of them is 0. */
export function filtered(values, filter) {
  return values.map((_, t) => {
    let sum = 0;
    for (let i = 0; i < filter.length && i <= t; i++) sum += filter[i] * values[t - i];
    return sum;
  });
}

/** The set as it is heard: whitened acceleration, the filter, and the length of the recording. */
export function heardSet(placement, set, stepS) {
  const raw = onGrid(bodyAcceleration(placement, set), stepS);
  const filter = whiteningFilter(noiseCovariance(placement, set, stepS, Math.round(filterS / stepS)));
  const middle = raw.reduce((sum, value) => sum + value, 0) / raw.length;
  const heard = filtered(
    raw.map((value) => value - middle),
    filter,
  );
  heard.fill(0, 0, filter.length); // the filter is not filled yet, and nobody moves yet
  const { timesS } = set.trace.groups[0];
  return { heard, filter, stepS, lengthS: timesS[timesS.length - 1] };
}
