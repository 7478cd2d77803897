import { chiSquareQuantile, tQuantile } from '../agreement/distributions.ts';
import { requireRange } from '../check.ts';

/**
 * Half width of the interval of a mean that is not exceeded with a given assurance: the spread of the sample itself is by chance.
 *
 * @param sd - true standard deviation, > 0 [unit of sd]
 * @param people - >= 2 [people]
 * @param level - of the interval, such as 0.95 [-]
 * @param assurance - share of samples whose interval is no wider, above 0 and below 1 [-]
 * @returns half width [unit of sd]
 * @throws {@link InputError} `out-of-range` for an argument
 *
 * Source: Kupper & Hafner (1989), Am Stat 43:101-105 (from memory, not checked against the paper)
 * Checked against: fixtures/reference/design.mean-width.json
 */
export function meanHalfWidth(sd: number, people: number, level: number, assurance: number): number {
  requireRange(sd, sd > 0, 'sd', '> 0');
  requireRange(people, Number.isInteger(people) && people >= 2, 'people', 'a whole number from 2 on');
  requireRange(level, level > 0 && level < 1, 'level', '0 < level < 1');
  requireRange(assurance, assurance > 0 && assurance < 1, 'assurance', '0 < assurance < 1');
  const df = people - 1;
  return tQuantile((1 + level) / 2, df) * sd * Math.sqrt(chiSquareQuantile(assurance, df) / (df * people));
}
