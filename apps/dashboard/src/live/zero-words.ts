import type { ZeroTaken } from '@surae/analysis';
import { EMPTY_BY_WORDS, SET_UP_WORDS, ZERO_REFUSALS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';

/** What became of a zero: its value, or why it was not taken, with the numbers. */
export function zeroWords(taken: ZeroTaken, quantity: 'force' | 'torque'): string {
  const words = SET_UP_WORDS;
  const unit = quantity === 'force' ? words.newton.text : words['newton-metre'].text;
  if (taken.kind === 'refused') {
    const { reason, found, allowed, emptyBy } = taken;
    const figures = { found: decimal(found, 1), allowed: decimal(allowed, 1), unit };
    const by = emptyBy === null ? '' : ` ${fill(EMPTY_BY_WORDS[emptyBy], figures)}`;
    return `${fill(ZERO_REFUSALS[reason], figures)}${by}`;
  }
  const { level, u, drift, emptyBy, emptyMost } = taken;
  const said = [fill(words['zero-taken'], { level: decimal(level, 1), u: uncertainty(u), unit })];
  if (drift !== null) {
    said.push(fill(words['zero-drift'], { change: decimal(drift.change, 1), unit }));
    said.push(words[`zero-drift-${drift.verdict}`].text);
  }
  if (emptyBy === 'quantity') said.push(fill(EMPTY_BY_WORDS.quantity, { allowed: decimal(emptyMost, 0), unit }));
  return said.join(' ');
}
