/** The next round number above a force, so that a picture does not jump while it rises: 1, 2 or 5 times a power of ten. */
export function roundAbove(value: number, least: number): number {
  const wanted = Math.max(value, least);
  const power = 10 ** Math.floor(Math.log10(wanted));
  const step = [1, 2, 5, 10].find((times) => times * power >= wanted * 1.05) ?? 20;
  return step * power;
}

/** Points of a course further apart than this have a hole between them [s]. Common practice, no source. */
const longestStepS = 0.25;

/** A course as a line in a picture of width and height 100, time to the right and force upwards; it begins anew after a hole. */
export function coursePath(
  course: readonly (readonly [timeS: number, net: number])[],
  lengthS: number,
  most: number,
): string {
  return course
    .map(([timeS, net], i) => {
      const isNew = timeS - (course[i - 1]?.[0] ?? -Infinity) > longestStepS;
      return `${isNew ? 'M' : 'L'}${((100 * timeS) / lengthS).toFixed(2)},${(100 - (100 * net) / most).toFixed(2)}`;
    })
    .join(' ');
}
