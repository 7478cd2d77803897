import type { MassFit } from '@surae/analysis';
import { MASS_REFUSALS, SET_UP_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** What a line through known masses says, a sentence each; or why it does not hold, with its numbers. */
export function massWords(fit: MassFit, validDays: number): readonly string[] {
  if (fit.kind === 'refused') {
    const { reason, found, allowed, massKg } = fit;
    const isShare = reason === 'not-straight';
    const isCount = reason === 'too-few-masses' || reason === 'too-light';
    const shown = (value: number): string => (isCount ? String(value) : decimal(isShare ? 100 * value : value, 1));
    return [fill(MASS_REFUSALS[reason], { found: shown(found), allowed: shown(allowed), mass: massKg ?? '' })];
  }
  const words = SET_UP_WORDS;
  const { slope, slopeU, offset, offsetU, departureN, departureShare, greatestN, returnN, reversed } = fit;
  const share = decimal(100 * departureShare, 2);
  return [
    fill(words['line-slope'], { slope: decimal(slope, 4), u: decimal(slopeU, 4) }),
    fill(words['line-offset'], { offset: decimal(offset, 2), u: decimal(offsetU, 2) }),
    fill(words['line-departure'], { departure: decimal(departureN, 2), share, greatest: decimal(greatestN, 1) }),
    returnN === null ? words['line-no-return'].text : fill(words['line-return'], { change: decimal(returnN, 2) }),
    ...(reversed ? [words['line-reversed'].text] : []),
    words['line-temperature'].text,
    fill(words['line-valid'], { days: validDays }),
  ];
}
