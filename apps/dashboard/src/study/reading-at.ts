import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { ItemTrace } from './item-trace.ts';

/** What a cursor stands at, in words: the time and the value of the sample that is there. */
export function readingAt({ timesS, values, unit, decimals }: ItemTrace, timeS: number): string {
  const words = RECOUNT_STUDY_WORDS;
  const time = decimal(timeS, 2);
  const value = values[timesS.findIndex((one) => one >= timeS - 1e-9)];
  if (value === undefined || Number.isNaN(value)) return fill(words['at-nothing'], { time });
  return fill(words['at-time'], { time, value: decimal(value, decimals), unit });
}
