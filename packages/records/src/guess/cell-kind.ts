import { type ClockKind, clockReading, dateOrdersOf } from '../form/clock.ts';
import { saysMissing } from '../form/number-form.ts';

/** What a field looks like before it is known how numbers are written. */
export type CellKind = 'numeric' | ClockKind | 'missing' | 'word' | 'other';

/** Digits with any marks in them. */
const numeric = /^[+\-\u2212]?(?:\d[\d.,'\u2019\u00a0\u2009\u202f ]*|[.,]\d+)(?:[eE][+-]?\d+)?$/;

/** A word begins with a letter, or is a code of letters and digits, or a date. */
const word = /^(?:[\p{L}_][\p{L}\p{M}\p{N}_ .:/+\-]*|\d+[\p{L}_][\p{L}\p{N}_-]*|\d{1,4}[-./]\d\d?[-./]\d{1,4})$/u;

export function cellKind(field: string): CellKind {
  const text = field.trim();
  if (saysMissing(text)) return 'missing';
  if (numeric.test(text) && !/\d [^\d]|\d\d\d\d [ \d]/.test(text)) return isDate(text) ? 'word' : 'numeric';
  const reading = text.includes(':') ? clockReading(text) : undefined;
  if (reading !== undefined) return reading.kind;
  if (text.includes(':') && dateOrdersOf(text) !== undefined) return 'date-time';
  return text.length <= 60 && word.test(text) ? 'word' : 'other';
}

function isDate(text: string): boolean {
  return /^(?:\d\d?\.\d\d?\.\d{4})$/.test(text);
}
