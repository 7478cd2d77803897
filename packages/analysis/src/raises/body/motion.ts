import type { BodyAcceleration } from '../../movement/body-acceleration.ts';
import { trunkPitch } from '../../movement/body-pitch.ts';
import { riseBetweenRests } from '../../movement/body-rise.ts';
import { contains, type Interval } from '../../signal/intervals.ts';
import type { Motion, Raise } from '../detection.ts';

/**
 * Rise of the body over time: in each repetition the acceleration integrated from bottom to bottom, 0 between them.
 *
 * @param body - acceleration on a regular grid [m/s2]
 * @param raises - counted repetitions in time order, not overlapping [s]
 * @param elsewhere - spans of other movement, where nothing can be said [s]
 * @param stance - quiet stance before the set, when there was one [s]
 * @param postureCutoffHz - low-pass of the trunk's angle [Hz]
 * @returns motion on the same grid [m]
 *
 * Source: ours
 */
export function bodyMotion(
  body: BodyAcceleration,
  raises: readonly Raise[],
  elsewhere: readonly Interval[],
  stance: Interval | undefined,
  postureCutoffHz: number,
): Motion {
  const { startS, sampleRateHz, upward, gaps, force, axes } = body;
  const heightM = new Float64Array(upward.length);
  const indexOf = (timeS: number): number =>
    Math.max(0, Math.min(upward.length, Math.round((timeS - startS) * sampleRateHz)));
  for (const span of elsewhere) heightM.fill(Number.NaN, indexOf(span.fromS), indexOf(span.toS));
  if (body.span === undefined) heightM.fill(Number.NaN);
  else {
    heightM.fill(Number.NaN, 0, indexOf(body.span.fromS));
    heightM.fill(Number.NaN, indexOf(body.span.toS));
  }
  for (const raise of raises) {
    const from = indexOf(raise.startS);
    const to = Math.min(upward.length, indexOf(raise.endS) + 1);
    if (to - from >= 3) heightM.set(riseBetweenRests(upward.subarray(from, to), sampleRateHz), from);
  }
  for (const gap of gaps) {
    for (let i = indexOf(gap.fromS); i < indexOf(gap.toS); i++) {
      if (contains(gap, startS + i / sampleRateHz)) heightM[i] = Number.NaN;
    }
  }
  const motion = { kind: 'body-rise', startS, sampleRateHz, heightM, gaps } as const;
  if (force !== undefined) return { ...motion, forceN: force };
  if (axes === undefined) return motion;
  const trunkPitchRad = trunkPitch(axes, sampleRateHz, startS, stance, postureCutoffHz);
  return { ...motion, accelerationExcess: upward, trunkPitchRad };
}
