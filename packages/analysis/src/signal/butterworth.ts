import { requireRange } from '../check.ts';

/**
 * One second-order section of a digital filter:
 * H(z) = (b0 + b1 z^-1 + b2 z^-2) / (1 + a1 z^-1 + a2 z^-2). A first-order section has b2 = a2 = 0.
 */
export interface Section {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

const MOST_ORDER = 8;

function requireDesign(order: number, cutoffHz: number, sampleRateHz: number): void {
  requireRange(order, Number.isInteger(order) && order >= 1 && order <= MOST_ORDER, 'order', `1 to ${MOST_ORDER}`);
  requireRange(sampleRateHz, sampleRateHz > 0, 'sampleRateHz', '> 0');
  requireRange(
    cutoffHz,
    cutoffHz > 0 && cutoffHz < sampleRateHz / 2,
    'cutoffHz',
    '0 < cut-off < half the sampling rate',
  );
}

/**
 * Sections of the analogue prototype 1 / (s^2 + s/Q + 1), one per pair of poles on the unit circle, through the bilinear
 * transform s = (1 - z^-1) / (k (1 + z^-1)) with k = tan(pi fc / fs), which puts the -3 dB point exactly at fc.
 * A high pass is the same with s replaced by 1/s.
 */
function design(order: number, cutoffHz: number, sampleRateHz: number, pass: 'low' | 'high'): Section[] {
  requireDesign(order, cutoffHz, sampleRateHz);
  const k = Math.tan((Math.PI * cutoffHz) / sampleRateHz);
  const sections: Section[] = [];
  if (order % 2 === 1) {
    const scale = 1 / (1 + k);
    const a1 = (k - 1) * scale;
    sections.push(
      pass === 'low' ? { b0: k * scale, b1: k * scale, b2: 0, a1, a2: 0 } : { b0: scale, b1: -scale, b2: 0, a1, a2: 0 },
    );
  }
  for (let pair = 0; pair < order >> 1; pair++) {
    // poles at angles (2 pair + 1) pi / (2 order) from the imaginary axis: 1/Q = 2 sin of that angle
    const damping = 2 * Math.sin(((2 * pair + 1) * Math.PI) / (2 * order));
    const scale = 1 / (1 + k * damping + k * k);
    const a1 = 2 * (k * k - 1) * scale;
    const a2 = (1 - k * damping + k * k) * scale;
    const gain = pass === 'low' ? k * k * scale : scale;
    sections.push({ b0: gain, b1: pass === 'low' ? 2 * gain : -2 * gain, b2: gain, a1, a2 });
  }
  return sections;
}

/**
 * Sections of a Butterworth low pass: gain 1 at 0 Hz, -3.01 dB at the cut-off in one pass.
 *
 * @param order - 1 to 8, per pass [-]
 * @param cutoffHz - frequency of half power, above 0 and below half the sampling rate [Hz]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @returns sections to be run one after the other, each with gain 1 at 0 Hz [-]
 * @throws {@link InputError} `out-of-range` for any of the three
 *
 * Source: Oppenheim & Schafer (2010), Discrete-Time Signal Processing, 3rd ed., 7.2 (bilinear transform)
 */
export function butterworthLowPass(order: number, cutoffHz: number, sampleRateHz: number): Section[] {
  return design(order, cutoffHz, sampleRateHz, 'low');
}

/**
 * Sections of a Butterworth high pass: gain 0 at 0 Hz, -3.01 dB at the cut-off in one pass.
 *
 * @param order - 1 to 8, per pass [-]
 * @param cutoffHz - frequency of half power, above 0 and below half the sampling rate [Hz]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @returns sections to be run one after the other [-]
 * @throws {@link InputError} `out-of-range` for any of the three
 *
 * Source: Oppenheim & Schafer (2010), Discrete-Time Signal Processing, 3rd ed., 7.2 (bilinear transform)
 */
export function butterworthHighPass(order: number, cutoffHz: number, sampleRateHz: number): Section[] {
  return design(order, cutoffHz, sampleRateHz, 'high');
}

/**
 * Cut-off to design one pass of a low pass with, so that two passes together have -3.01 dB at the wanted cut-off.
 *
 * Two passes square the gain, which moves the half-power point down. Winter raises the prewarped frequency
 * tan(pi fc / fs) by 1/C, C = (2^(1/passes) - 1)^(1/(2 order)) = 0.802 for order 2; dividing fc itself by C would leave
 * a gain of 0.72 at fc when fc is a tenth of the rate.
 *
 * @param cutoffHz - wanted frequency of half power after both passes, above 0 and below half the sampling rate [Hz]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @param order - order of each pass, 1 to 8 [-]
 * @returns cut-off for each pass, always below half the sampling rate [Hz]
 * @throws {@link InputError} `out-of-range` for any of the three
 *
 * Source: Winter (2009), Biomechanics and Motor Control of Human Movement, 4th ed.; Robertson & Dowling (2003), J Electromyogr Kinesiol 13:569-573
 */
export function twoPassCutoffHz(cutoffHz: number, sampleRateHz: number, order: number): number {
  requireDesign(order, cutoffHz, sampleRateHz);
  const correction = (Math.SQRT2 - 1) ** (1 / (2 * order));
  return (sampleRateHz / Math.PI) * Math.atan(Math.tan((Math.PI * cutoffHz) / sampleRateHz) / correction);
}
