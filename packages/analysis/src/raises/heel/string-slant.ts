import { heightFromString } from '../../movement/foot-lever.ts';
import type { FootGeometry } from '../../movement/heel-height.ts';
import type { Raise } from '../detection.ts';
import type { HeelSettings } from './heel-settings.ts';

/**
 * Height of the heel above its rest from what a string was drawn out since. The zero of the sensor is no matter: many are
 * drawn out by some length already when the heel is down.
 *
 * @param drawnM - reading less that at rest [m]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @param foot - length of the string at rest, as far as known [m]
 * @returns height; what was read where the length is not known [m]
 *
 * Source: geometry of {@link heightFromString}
 */
export function heightOfDrawn(
  drawnM: number,
  heelLeverM: number,
  { stringRestLengthM }: Pick<FootGeometry, 'stringRestLengthM'>,
): number {
  return stringRestLengthM === undefined ? drawnM : heightFromString(drawnM, heelLeverM, stringRestLengthM);
}

/**
 * Relative uncertainty that the heights of a set share where a string may have measured them whose length at rest nobody gave. It pulls
 * aslant and reads too much, by anything from nothing to what the shortest string does at the greatest height.
 *
 * @param raises - with heights as the string read them [m]
 * @param foot - lever and string, as far as known [m]
 * @param settings - see {@link HeelSettings}; the shortest string, and the lever where none was measured [m]
 * @returns relative standard uncertainty; 0 where the length of the string is known, and where nothing was read [-]
 *
 * Source: JCGM 100:2008 (GUM) clause 4.3.7: rectangular from 0 to a and not corrected for, hence a / sqrt 3 about 0
 */
export function slantRelativeU(
  raises: readonly Pick<Raise, 'heightM'>[],
  { heelLeverM, stringRestLengthM }: FootGeometry,
  { nominalHeelLeverM, shortestStringM }: HeelSettings,
): number {
  const readingM = Math.max(0, ...raises.map(({ heightM }) => heightM));
  if (stringRestLengthM !== undefined || readingM === 0) return 0;
  const heightM = heightFromString(readingM, heelLeverM ?? nominalHeelLeverM, shortestStringM);
  return (readingM / heightM - 1) / Math.sqrt(3);
}
