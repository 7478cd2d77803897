import { localeInUse } from './locale.ts';

/** How numbers are written, by locale and digits behind the point: making one takes much longer than using it. */
const written = new Map<string, Intl.NumberFormat>();

function numberFormat(decimals: number): Intl.NumberFormat {
  const locale = localeInUse();
  const key = `${locale} ${decimals}`;
  const made = written.get(key);
  if (made !== undefined) return made;
  const format = new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
  });
  written.set(key, format);
  return format;
}

/** A number that was written with a point, such as 12.50, as the language in use writes it, digit by digit; other text, such as a code 007, as it is. */
export function inDigits(text: string): string {
  const digits = /^-?(?:0|[1-9]\d*)(?:\.(\d+))?$/.exec(text);
  return digits === null ? text : numberFormat(digits[1]?.length ?? 0).format(text as Intl.StringNumericLiteral);
}
