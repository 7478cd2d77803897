/** Where the presses of a stepper lead: from the begin at the first one, then by each press, never out of the range. */
export function steppedTo(
  value: number | null,
  by: number,
  { begin, most }: { readonly begin: number; readonly most: number },
): number {
  if (value === null) return begin;
  // halves and tenths that are added gather no digits that nobody pressed
  return Math.min(most, Math.max(0, Number((value + by).toFixed(9))));
}
