import { RUN_FILE_LIMITS } from '@surae/shared';

/** A place on the earth [deg]: north and east count up. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

const perDegree = Math.PI / 180;

/**
 * Length of the shortest way over a sphere of the earth's mean radius, by the haversine.
 *
 * @param one - first place [deg]
 * @param other - second place [deg]
 * @returns length [m]; up to about 0.5 % off the ellipsoid
 * Source: Sinnott 1984 Sky and Telescope 68:158; radius: mean radius R1 of the IUGG (from memory)
 */
export function greatCircleM(one: Place, other: Place): number {
  const [from, to] = [one.latitude * perDegree, other.latitude * perDegree];
  const north = Math.sin((to - from) / 2);
  const east = Math.sin(((other.longitude - one.longitude) * perDegree) / 2);
  const h = north * north + Math.cos(from) * Math.cos(to) * east * east;
  // rounding may bring it beyond 1 for places on opposite sides
  return 2 * RUN_FILE_LIMITS.earthRadiusM.value * Math.asin(Math.sqrt(Math.min(1, h)));
}
