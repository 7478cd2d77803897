import { requireRange } from '../check.ts';
import type { Section } from './butterworth.ts';

/**
 * A causal filter that takes one sample at a time (transposed direct form II). The first sample sets it to the steady
 * state of a signal that has always had that value, so that there is no start-up swing.
 */
export class SectionFilter {
  private readonly coefficients: Float64Array;
  private readonly state: Float64Array;
  private started = false;

  constructor(sections: readonly Section[]) {
    requireRange(sections.length, sections.length >= 1, 'sections.length', '>= 1');
    this.coefficients = new Float64Array(5 * sections.length);
    this.state = new Float64Array(2 * sections.length);
    sections.forEach(({ b0, b1, b2, a1, a2 }, i) => this.coefficients.set([b0, b1, b2, a1, a2], 5 * i));
  }

  /** The filtered value [unit of sample] for the next sample [unit of sample]. */
  step(sample: number): number {
    const c = this.coefficients;
    const z = this.state;
    if (!this.started) this.settle(sample);
    let value = sample;
    for (let i = 0, k = 0; i < z.length; i += 2, k += 5) {
      const filtered = c[k] * value + z[i];
      z[i] = c[k + 1] * value - c[k + 3] * filtered + z[i + 1];
      z[i + 1] = c[k + 2] * value - c[k + 4] * filtered;
      value = filtered;
    }
    return value;
  }

  /** Puts the filter into the state of a signal that has always had this value [unit of sample]. */
  settle(sample: number): void {
    const c = this.coefficients;
    let value = sample;
    for (let i = 0, k = 0; i < this.state.length; i += 2, k += 5) {
      const settled = (value * (c[k] + c[k + 1] + c[k + 2])) / (1 + c[k + 3] + c[k + 4]);
      this.state[i + 1] = c[k + 2] * value - c[k + 4] * settled;
      this.state[i] = c[k + 1] * value - c[k + 3] * settled + this.state[i + 1];
      value = settled;
    }
    this.started = true;
  }
}
