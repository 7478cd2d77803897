const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const decimalComma = /^[+-]?(?:\d+,\d*|,\d+)(?:[eE][+-]?\d+)?$/;
const notFinite = /^[+-]?(?:nan|inf|infinity|1\.#(?:inf|qnan|ind)\d*)$/i;
const unfinished = /^[+-]?(?:\d+\.?\d*|\.\d*)?(?:[eE][+-]?)?$/;

/** Why a text is no number. */
export type NumberFault = 'empty-field' | 'not-a-number' | 'not-finite' | 'decimal-comma';

/**
 * The number that a field spells, or why it is none: decimal digits with a point and an exponent, blanks around it
 * allowed; no thousands separators, no other bases. Correctly rounded.
 */
export function parseNumber(field: string): number | NumberFault {
  const text = field.replace(/^[ \t]+|[ \t]+$/g, '');
  if (text === '') return 'empty-field';
  if (number.test(text)) {
    const value = Number(text);
    return Number.isFinite(value) ? value : 'not-finite';
  }
  if (notFinite.test(text)) return 'not-finite';
  return decimalComma.test(text) ? 'decimal-comma' : 'not-a-number';
}

/** Whether a field can be the start of a number whose end is missing. */
export function isUnfinishedNumber(field: string): boolean {
  return unfinished.test(field.trim());
}

/** What each fault of a number asks for. */
export const expectedInstead: Readonly<Record<NumberFault, string>> = {
  'empty-field': 'a number',
  'not-a-number': 'a number',
  'not-finite': 'a finite number',
  'decimal-comma': 'a number with a decimal point',
};
