/** The mark between whole and fraction of a number. */
export type DecimalMark = '.' | ',';

/** The mark between groups of three digits; a blank also stands for the narrow and the hard one. */
export type ThousandsMark = '.' | ',' | ' ' | "'";

/** How numbers are written. */
export interface NumberForm {
  readonly decimal: DecimalMark;
  /** null where digits stand without groups */
  readonly thousands: ThousandsMark | null;
}

/** Greatest number of digits in a row that is looked at; no sensor writes more. */
const MOST_CHARACTERS = 40;

const plain = {
  '.': /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/,
  ',': /^[+-]?(?:\d+,?\d*|,\d+)(?:[eE][+-]?\d+)?$/,
} as const;

const groups: Readonly<Record<ThousandsMark, string>> = {
  '.': '\\.',
  ',': ',',
  ' ': '[ \\u00a0\\u2009\\u202f]',
  "'": "['\\u2019]",
};

const marks = ['.', ','] as const;
const grouped = new Map<string, RegExp>(
  marks.flatMap((decimal) =>
    (Object.keys(groups) as ThousandsMark[])
      .filter((mark) => mark !== decimal)
      .map((mark) => [
        `${decimal}${mark}`,
        new RegExp(`^[+-]?[1-9]\\d{0,2}(?:${groups[mark]}\\d{3})+(?:\\${decimal}\\d*)?(?:[eE][+-]?\\d+)?$`),
      ]),
  ),
);

/** A minus as typesetters write it, and a hyphen that does not break. */
const otherMinus = /^[\u2212\u2010\u2011]/;

/** The number that a field spells in this form, or undefined where it is none: nothing is repaired. */
export function numberIn(field: string, form: NumberForm): number | undefined {
  const text = field.trim().replace(otherMinus, '-');
  if (text === '' || text.length > MOST_CHARACTERS) return undefined;
  const { decimal, thousands } = form;
  let digits = text;
  if (!plain[decimal].test(text)) {
    if (thousands === null || grouped.get(`${decimal}${thousands}`)?.test(text) !== true) return undefined;
    digits = text.replace(new RegExp(groups[thousands], 'g'), '');
  }
  const value = Number(decimal === ',' ? digits.replace(',', '.') : digits);
  return Number.isFinite(value) ? value : undefined;
}

/** Texts that stand where a value is missing; compared in lower case. */
export const missingTexts: ReadonlySet<string> = new Set([
  '',
  'nan',
  '-nan',
  '+nan',
  'na',
  'n/a',
  '#n/a',
  '#na',
  '#value!',
  '#div/0!',
  '#num!',
  '1.#qnan',
  '-1.#ind',
  '1.#inf',
  'inf',
  '-inf',
  '+inf',
  'infinity',
  '-infinity',
  'null',
  'nil',
  'none',
  'missing',
  'undefined',
  '-',
  '--',
  '---',
  '.',
  '?',
  '*',
]);

/** Whether a text says that nothing was measured. */
export function saysMissing(field: string): boolean {
  return missingTexts.has(field.trim().toLowerCase());
}
