/** The upper end of an axis from zero: the least number of one round digit that holds the greatest value. */
export function roundTop(most: number): number {
  if (!(most > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(most));
  const top = [1, 2, 3, 4, 5, 6, 8, 10].map((digit) => digit * power).find((one) => one >= most) ?? 10 * power;
  return Number(top.toPrecision(3));
}
