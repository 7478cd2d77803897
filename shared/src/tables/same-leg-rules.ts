import type { Entry } from '../entry.ts';

/** What two tests under the names of both legs may share before it is asked whether one leg was tested twice. */
export interface SameLegRule extends Entry {
  readonly value: number;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** When two tests look as if they were of one leg. Neither sign proves it: whoever was there answers. */
export const SAME_LEG_RULES = {
  /**
   * angle between up as the sensor saw it at the beginning of both, at most: it lies as it lay. Where a sensor is put on anew with
   * a spread of 5 degrees about each of two axes, one in 25 lies as close as this by chance, 1 - exp(-2^2 / (4 x 5^2)).
   */
  turnedMost: { ...practice, id: 'same-leg.turned-most', unit: 'deg', value: 2 },
  /** difference of the reference heights, at most, as a share of the greater one: told beside the first sign, and not asked for alone */
  heightShareMost: { ...practice, id: 'same-leg.height-share-most', unit: '1', value: 0.01 },
} as const satisfies Readonly<Record<string, SameLegRule>>;
