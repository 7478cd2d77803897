import type { RestLoad } from '@surae/analysis';
import { REST_LOAD_REFUSALS, SET_UP_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** What became of the weight of the resting leg: the load, or why it was not taken, with the numbers. */
export function restLoadWords(load: RestLoad): string {
  if (load.kind === 'rest-load') {
    return fill(SET_UP_WORDS['rest-load-taken'], { load: decimal(load.loadN, 0), u: decimal(load.uN, 1) });
  }
  const { reason, found, allowed } = load;
  const shown = (value: number | null): string => (value === null ? '' : decimal(value, 1));
  return fill(REST_LOAD_REFUSALS[reason], { found: shown(found), allowed: shown(allowed) });
}
