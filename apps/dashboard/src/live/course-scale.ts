/** The next round number above a force, so that a picture does not jump while it rises: 1, 2 or 5 times a power of ten. */
export function roundAbove(value: number, least: number): number {
  const wanted = Math.max(value, least);
  const power = 10 ** Math.floor(Math.log10(wanted));
  const step = [1, 2, 5, 10].find((times) => times * power >= wanted * 1.05) ?? 20;
  return step * power;
}

/** A course as the points of a line in a picture of width and height 100, time to the right and force upwards. */
export function coursePoints(
  course: readonly (readonly [timeS: number, net: number])[],
  lengthS: number,
  most: number,
): string {
  return course
    .map(([timeS, net]) => `${((100 * timeS) / lengthS).toFixed(2)},${(100 - (100 * net) / most).toFixed(2)}`)
    .join(' ');
}
