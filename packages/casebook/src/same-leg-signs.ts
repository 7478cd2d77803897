import { SAME_LEG_RULES } from '@surae/shared';
import type { SensorTold } from './sensor-told.ts';
import { sensorKey } from './set-up.ts';
import type { VisitSet } from './visit.ts';

type Up = readonly [x: number, y: number, z: number];

/** How a sensor lay when a test began, as far as it was kept. */
export interface SensorLay {
  readonly placement: string;
  readonly sensor?: SensorTold;
  readonly up: Up | null;
}

/** Angle between two directions of unit length [deg]. */
function angleDeg(one: Up, other: Up): number {
  const [a, b, c] = one;
  const [d, e, f] = other;
  // by sine and cosine, because the cosine alone says little about small angles
  const cross = Math.hypot(b * f - c * e, c * d - a * f, a * e - b * d);
  return (Math.atan2(cross, a * d + b * e + c * f) * 180) / Math.PI;
}

/** Places that a sensor has to leave for the other leg; a plate and the trunk serve both. */
const onALeg: readonly string[] = ['foot', 'heel'];

/** How far a sensor was turned between two tests [deg]; null where it is not known, it was another sensor or place, or one that is not on a leg. */
export function turnedDeg(first: SensorLay, second: SensorLay): number | null {
  if (first.sensor === undefined || second.sensor === undefined || first.up === null || second.up === null) return null;
  if (!onALeg.includes(first.placement)) return null;
  if (first.placement !== second.placement || sensorKey(first.sensor) !== sensorKey(second.sensor)) return null;
  return angleDeg(first.up, second.up);
}

/** Whether so small a turn says that the sensor was not taken over to the other leg. */
export function liesAsItLay(turned: number | null): turned is number {
  return turned !== null && turned <= SAME_LEG_RULES.turnedMost.value;
}

/** What of two sets tells whether one leg was tested twice; `cannot-tell` where nothing does, which is the usual case. */
export interface SameLegSigns {
  readonly verdict: 'likely' | 'cannot-tell';
  /** how far the sensor was turned between both; null is not known [deg] */
  readonly turnedDeg: number | null;
  /** difference of the reference heights as a share of the greater one, where it is very small; else null [-] */
  readonly heightShare: number | null;
}

type Recorded = Pick<VisitSet, 'choice' | 'report'>;

function layOf({ choice: { placement, sensor, setUp } }: Recorded): SensorLay {
  return { placement, ...(sensor === undefined ? {} : { sensor }), up: setUp?.up ?? null };
}

function heightShare(first: Recorded, second: Recorded): number | null {
  const heights = [first, second].map(({ report }) => report?.reference?.heightM ?? null);
  const [one, other] = heights;
  if (one == null || other == null || !(one > 0) || !(other > 0)) return null;
  const share = Math.abs(one - other) / Math.max(one, other);
  return share <= SAME_LEG_RULES.heightShareMost.value ? share : null;
}

/**
 * Whether two sets under the names of both legs look as if they were of one: the sensor lies as it lay. Two legs of one person are
 * often alike in height, so that heights alone say nothing. A sensor that was turned proves no other leg either.
 *
 * @param first - the earlier set [-]
 * @param second - the later one, under the name of the other leg [-]
 * @returns what can be told, with its figures [deg, -]
 * Source: ours; limits common practice, no source
 */
export function sameLegSigns(first: Recorded, second: Recorded): SameLegSigns {
  const turned = turnedDeg(layOf(first), layOf(second));
  return {
    verdict: liesAsItLay(turned) ? 'likely' : 'cannot-tell',
    turnedDeg: turned,
    heightShare: heightShare(first, second),
  };
}
