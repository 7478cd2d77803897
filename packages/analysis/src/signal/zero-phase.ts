import { requireCount, requireFinite, requireRange } from '../check.ts';
import type { Section } from './butterworth.ts';

/** Runs one section over the signal in place, forward or backward, from the steady state of the first value it meets. */
function runSection(samples: Float64Array, section: Section, first: number, backward: boolean): void {
  const { b0, b1, b2, a1, a2 } = section;
  const settled = (first * (b0 + b1 + b2)) / (1 + a1 + a2);
  let z2 = b2 * first - a2 * settled;
  let z1 = b1 * first - a1 * settled + z2;
  const count = samples.length;
  const step = backward ? -1 : 1;
  for (let i = backward ? count - 1 : 0, left = count; left > 0; i += step, left--) {
    const value = samples[i];
    const filtered = b0 * value + z1;
    z1 = b1 * value - a1 * filtered + z2;
    z2 = b2 * value - a2 * filtered;
    samples[i] = filtered;
  }
}

function runPass(samples: Float64Array, sections: readonly Section[], backward: boolean): void {
  let first = samples[backward ? samples.length - 1 : 0];
  for (const section of sections) {
    runSection(samples, section, first, backward);
    // the value at which this section would settle is what the next one has always seen
    first *= (section.b0 + section.b1 + section.b2) / (1 + section.a1 + section.a2);
  }
}

/**
 * Samples to add at each end, as scipy.signal.sosfiltfilt counts them: three times the length of the transfer function,
 * where first-order sections save one.
 */
function padCount(sections: readonly Section[]): number {
  const firstOrder = Math.min(
    sections.filter((section) => section.b2 === 0).length,
    sections.filter((section) => section.a2 === 0).length,
  );
  return 3 * (2 * sections.length + 1 - firstOrder);
}

/**
 * A signal filtered forward and backward, so that nothing is shifted in time; the gain is applied twice.
 *
 * Each end is extended by turning the signal about its end sample (odd extension), and each pass starts in the steady
 * state of the first value, as scipy.signal.sosfiltfilt does by default. A signal shorter than the extension is
 * extended by as much as it has, n - 1 samples; one sample comes back as it is times the squared gain at 0 Hz.
 *
 * @param sections - sections of one pass, at least one [-]
 * @param samples - the signal, regularly sampled, n >= 1, finite; left as it is [unit of samples]
 * @returns the filtered signal, same length [unit of samples]
 * @throws {@link InputError} `too-short` when n = 0; `not-finite` on NaN or infinity; `out-of-range` without sections
 *
 * Source: Gustafsson (1996), IEEE Trans Signal Process 44:988-992 (the problem of the ends); extension and state as in SciPy's sosfiltfilt
 * Checked against: fixtures/reference/zero-phase.*.json
 */
export function filterZeroPhase(sections: readonly Section[], samples: Float64Array): Float64Array {
  requireRange(sections.length, sections.length >= 1, 'sections.length', '>= 1');
  requireCount(samples, 1, 'samples');
  requireFinite(samples, 'samples');
  const count = samples.length;
  const pad = Math.min(padCount(sections), count - 1);
  const extended = new Float64Array(count + 2 * pad);
  extended.set(samples, pad);
  const last = count - 1;
  for (let i = 1; i <= pad; i++) {
    extended[pad - i] = 2 * samples[0] - samples[i];
    extended[pad + last + i] = 2 * samples[last] - samples[last - i];
  }
  runPass(extended, sections, false);
  runPass(extended, sections, true);
  return extended.slice(pad, pad + count);
}
