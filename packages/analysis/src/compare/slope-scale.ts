import type { ForceScale } from './force-scale.ts';

/** A value on a day, with the scale that it was counted by. */
export interface ScaledPoint {
  readonly x: number;
  readonly y: number;
  /** left out where it was counted by no calibration */
  readonly scale?: ForceScale;
}

/**
 * What the scales put into a slope: each calibration is moved up and down by its standard uncertainty, with all values that
 * were counted by it, and the slope is taken again. One calibration for all turns the slope by its share; one that begins in
 * the middle looks like a rise.
 *
 * @param points - values in order [unit of x, unit of y]
 * @param slopeOf - the slope through values [unit of y per unit of x]
 * @returns standard uncertainty by all scales whose error is known [unit of y per unit of x]
 *
 * Source: JCGM 100:2008, 5.1.2 with sensitivities by 5.1.3, note 2: half the difference of both results
 */
export function scaleSlopeU(
  points: readonly ScaledPoint[],
  slopeOf: (points: readonly ScaledPoint[]) => number,
): number {
  const groups = new Map<string, { readonly at: Set<number>; readonly relativeU: number }>();
  points.forEach(({ scale }, i) => {
    if (scale === undefined || scale.relativeU === null) return;
    // one name with two errors contradicts itself, and no name is no other one's: then each counts for itself
    const name = scale.calibration === null ? `point ${i}` : `calibration ${scale.calibration} ${scale.relativeU}`;
    const group = groups.get(name) ?? { at: new Set<number>(), relativeU: scale.relativeU };
    group.at.add(i);
    groups.set(name, group);
  });
  const parts = [...groups.values()].map(({ at, relativeU }) => {
    const moved = (by: number): number =>
      slopeOf(points.map((point, i) => (at.has(i) ? { ...point, y: point.y * (1 + by) } : point)));
    return (moved(relativeU) - moved(-relativeU)) / 2;
  });
  return Math.hypot(...parts);
}
