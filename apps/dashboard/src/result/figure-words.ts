import { AXIS_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { LegFigure } from './leg-figure.ts';

/** A figure as one reads it, without its unit. */
export function figureWords(figure: LegFigure, decimals: number): string {
  if (figure.kind === 'open') return AXIS_WORDS.open.text;
  const value = decimal(figure.value, decimals);
  return figure.atLeast ? fill(AXIS_WORDS['at-least'], { value }) : value;
}

/** Its 95 % interval in words, or why there is no figure. */
export function intervalWords(figure: LegFigure, decimals: number): string {
  if (figure.kind === 'open') return figure.why;
  if (figure.atLeast) return AXIS_WORDS.unbounded.text;
  const low = decimal(figure.low, decimals);
  const high = decimal(figure.high, decimals);
  return low === high ? AXIS_WORDS.exact.text : fill(AXIS_WORDS.interval, { low, high });
}
