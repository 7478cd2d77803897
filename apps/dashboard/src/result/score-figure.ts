import type { Report } from '@surae/analysis';
import type { LegFigure } from './leg-figure.ts';

/** The one number of repetitions that a result is told by, with its bounds: what the axis draws, the sentence says. */
export function scoreFigure({ count, end }: Report): Extract<LegFigure, { readonly kind: 'measured' }> {
  const { scored, scoredLow, scoredHigh, censored } = count;
  const atLeast = censored || end.class === 'censored';
  return { kind: 'measured', value: scored, low: scoredLow, high: scoredHigh, atLeast };
}
