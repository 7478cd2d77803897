import type { RestLoad } from '@surae/analysis';
import { REST_LOAD_REFUSALS, SET_UP_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';

/** A load with the uncertainty of its calibration in its own; null is not known, and not in it. */
export function withCalibration<Load extends { readonly loadN: number; readonly uN: number }>(
  load: Load,
  relativeU: number | null,
): Load {
  return relativeU === null ? load : { ...load, uN: Math.hypot(load.uN, relativeU * load.loadN) };
}

/** What became of the weight of the resting leg: the load, or why it was not taken, with the numbers. */
export function restLoadWords(load: RestLoad, isCalibrated: boolean): string {
  if (load.kind === 'rest-load') {
    const words = SET_UP_WORDS[isCalibrated ? 'rest-load-calibrated' : 'rest-load-taken'];
    return fill(words, { load: decimal(load.loadN, 0), u: uncertainty(load.uN) });
  }
  const { reason, found, allowed } = load;
  const shown = (value: number | null): string => (value === null ? '' : decimal(value, 1));
  return fill(REST_LOAD_REFUSALS[reason], { found: shown(found), allowed: shown(allowed) });
}
