import { butterworthHighPass, butterworthLowPass, type Section } from '../signal/butterworth.ts';
import { SectionFilter } from '../signal/section-filter.ts';
import type { BlockBodySettings } from './block-settings.ts';

/**
 * Section of a double integral that leaks: 1 / (s^2 + sqrt(2) w s + w^2), w = 2 pi f, by the bilinear transform. Well
 * above f it integrates twice; a constant does not grow.
 */
function leakyDoubleIntegral(leakHz: number, rateHz: number): Section {
  const w = 2 * Math.PI * leakHz;
  const k = 2 * rateHz;
  const scale = 1 / (k * k + Math.SQRT2 * w * k + w * w);
  return {
    b0: scale,
    b1: 2 * scale,
    b2: scale,
    a1: 2 * (w * w - k * k) * scale,
    a2: (k * k - Math.SQRT2 * w * k + w * w) * scale,
  };
}

/** Band-passed rise of the body from its vertical acceleration, one cell at a time; it swings about zero. */
export class BodyRise {
  private readonly filter: SectionFilter;
  private readonly leakHz: number;

  constructor(settings: BlockBodySettings, cellRateHz: number) {
    this.leakHz = settings.leakHz;
    this.filter = new SectionFilter([
      ...butterworthLowPass(2, settings.cutoffHz, cellRateHz),
      ...butterworthHighPass(2, settings.leakHz, cellRateHz),
      leakyDoubleIntegral(settings.leakHz, cellRateHz),
    ]);
  }

  /** Takes a vertical acceleration with any constant on it [m/s2]; gives the rise [m]. */
  step(acceleration: number): number {
    return this.filter.step(acceleration);
  }

  /** Forgets what went before: the person stands still under this constant [m/s2]. */
  settle(acceleration: number): void {
    this.filter.settle(acceleration);
  }

  /**
   * How much earlier than the body the band-passed rise moves, for a repetition of a given length [s]: two second-order
   * Butterworth high passes at the leak turn the phase forward by atan(sqrt(2) r / (1 - r^2)) each, r = leak / frequency.
   */
  leadS(cycleS: number): number {
    const r = this.leakHz * cycleS;
    return (2 * Math.atan2(Math.SQRT2 * r, 1 - r * r) * cycleS) / (2 * Math.PI);
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
