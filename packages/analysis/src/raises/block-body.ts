import type { BlockBodySettings } from './block-settings.ts';

/**
 * Weights that turn accelerations about an instant into the rise at that instant, no phase turned: the transform
 * -1/w^2 of the double integral, times (1 - exp(-(w s)^2 / 2))^2, which lets drift go, times a Gaussian low pass, cut
 * off smoothly at the reach. A constant and a steady drift of the acceleration give nothing.
 */
function riseWeights(settings: BlockBodySettings, cellS: number): Float64Array {
  const { spreadS, reachS, cutoffHz } = settings;
  const reach = Math.round(reachS / cellS);
  const weights = new Float64Array(2 * reach + 1);
  const stepHz = 1 / (8 * reachS);
  for (let f = stepHz / 2; f < 4 * cutoffHz; f += stepHz) {
    const w = 2 * Math.PI * f;
    const gain = (1 - Math.exp(-((w * spreadS) ** 2) / 2)) ** 2 * Math.exp(-((f / cutoffHz) ** 2) / 2);
    // inverse Fourier transform of an even function: twice the integral over positive frequencies
    const share = (-2 * gain * stepHz * cellS) / (w * w);
    for (let i = -reach; i <= reach; i++) weights[i + reach] += share * Math.cos(w * i * cellS);
  }
  let sum = 0;
  let taperSum = 0;
  const taper = (i: number): number => 0.5 + 0.5 * Math.cos((Math.PI * i) / (reach + 1));
  for (let i = -reach; i <= reach; i++) {
    weights[i + reach] *= taper(i);
    sum += weights[i + reach];
    taperSum += taper(i);
  }
  for (let i = -reach; i <= reach; i++) weights[i + reach] -= (sum / taperSum) * taper(i);
  return weights;
}

/**
 * Band-passed rise of the body from its vertical acceleration, one cell at a time. The rise at an instant needs what
 * comes after it, so it is given with a delay of {@link delayS}; it swings about zero.
 */
export class BodyRise {
  private readonly weights: Float64Array;
  /** the last accelerations, twice over, so that any stretch of them lies in one piece */
  private readonly ring: Float64Array;
  private at = 0;
  /** how long ago the instant lies whose rise is given [s] */
  readonly delayS: number;

  constructor(settings: BlockBodySettings, cellRateHz: number) {
    this.weights = riseWeights(settings, 1 / cellRateHz);
    this.ring = new Float64Array(2 * this.weights.length);
    this.delayS = (this.weights.length - 1) / 2 / cellRateHz;
  }

  /** Takes a vertical acceleration with any constant on it [m/s2]; gives the rise [m]. */
  step(acceleration: number): number {
    const { ring, weights } = this;
    const count = weights.length;
    ring[this.at] = acceleration;
    ring[this.at + count] = acceleration;
    this.at = (this.at + 1) % count;
    let riseM = 0;
    for (let i = 0, k = this.at; i < count; i++, k++) riseM += weights[i] * ring[k];
    return riseM;
  }

  /** Forgets what went before: the person has stood still under this constant [m/s2]. */
  settle(acceleration: number): void {
    this.ring.fill(acceleration);
  }
}

/** Vertical acceleration of a person on a platform, once the weight is known and while the person stands on it. */
export class PlatformAcceleration {
  private readonly settings: BlockBodySettings;
  private readonly cellS: number;
  private meanN = 0;
  private steadyForS = 0;
  /** body weight as read from the platform [N] */
  weightN: number | undefined;

  constructor(settings: BlockBodySettings, cellRateHz: number) {
    this.settings = settings;
    this.cellS = 1 / cellRateHz;
  }

  /** Takes the force [N]; gives the acceleration [m/s2], or undefined while nobody stands there steadily. */
  step(forceN: number): number | undefined {
    const { settings } = this;
    if (this.weightN === undefined) {
      this.meanN += (this.cellS / 0.3) * (forceN - this.meanN); // a mean over about a third of a second
      const steady = this.meanN > settings.loadedN && Math.abs(forceN - this.meanN) < settings.steadyShare * this.meanN;
      this.steadyForS = steady ? this.steadyForS + this.cellS : 0;
      if (this.steadyForS < settings.steadyS) return undefined;
      this.weightN = this.meanN;
    }
    if (forceN < settings.unloadedShare * this.weightN) {
      this.weightN = undefined;
      this.meanN = forceN;
      this.steadyForS = 0;
      return undefined;
    }
    return (settings.gravityMps2 * (forceN - this.weightN)) / this.weightN;
  }
}
