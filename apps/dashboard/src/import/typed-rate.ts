/** The samples a second that somebody typed, by point or comma; undefined where it is no number from 10 to 2000 [Hz]. */
export function rateOf(typed: string): number | undefined {
  if (typed.trim() === '') return undefined;
  const rate = Number(typed.replace(',', '.'));
  return rate >= 10 && rate <= 2000 ? rate : undefined;
}
