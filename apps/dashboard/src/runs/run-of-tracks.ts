import { RUN_FILE_LIMITS } from '@surae/shared';
import type { Track, TrackPoint, TrackSegment } from './gpx-tracks.ts';
import { greatCircleM } from './great-circle.ts';
import { type RunCadence, runCadence } from './run-cadence.ts';
import { RunFileError } from './run-file-error.ts';

/** A run as a track tells it; times and lengths are whole seconds and metres. */
export interface TrackRun {
  /** of its beginning, by the calendar of the place */
  readonly day: string;
  /** whose clock told the day: that of the file, or that of this device */
  readonly dayBy: 'file' | 'device';
  /** from the first to the last point, and without the pauses */
  readonly wholeS: number;
  readonly movingS: number;
  readonly distanceM: number;
  /** by how much the distance may be off */
  readonly distanceErrorM: number;
  readonly pauses: number;
  /** stretches without a usable point in which somebody moved on, and how long they were together */
  readonly gaps: number;
  readonly gapS: number;
  /** points that lie off the way, and points without a time that can be used */
  readonly spikes: number;
  readonly untimed: number;
  readonly tracks: number;
  /** steps a minute; null where the file has none */
  readonly cadence: RunCadence | null;
  /** faster than anybody runs far: it may have been a ride */
  readonly isFast: boolean;
}

type Timed = TrackPoint & { readonly timeMs: number };

const limit = (name: keyof typeof RUN_FILE_LIMITS): number => RUN_FILE_LIMITS[name].value;

interface Sums {
  pauses: number;
  pauseS: number;
  gaps: number;
  gapS: number;
  distanceM: number;
  spikes: number;
}

/** Points with a time that is later than that of the one before. */
function timedOf(segment: TrackSegment): readonly Timed[] {
  const timed: Timed[] = [];
  for (const point of segment) {
    const { timeMs } = point;
    if (timeMs !== null && timeMs > (timed.at(-1)?.timeMs ?? -Infinity)) timed.push({ ...point, timeMs });
  }
  return timed;
}

function stepOf(from: Timed, to: Timed): { readonly s: number; readonly m: number; readonly speed: number } {
  const s = (to.timeMs - from.timeMs) / 1000;
  const m = greatCircleM(from, to);
  return { s, m, speed: m / s };
}

/** The next point that can have been reached from here; undefined where none of the next few can. */
function nextReached(points: readonly Timed[], last: Timed, at: number): number | undefined {
  for (let next = at; next < points.length && next <= at + limit('spikesMost'); next++) {
    if (stepOf(last, points[next]!).speed <= limit('speedMost')) return next;
  }
  return undefined;
}

function addSegment(points: readonly Timed[], sums: Sums): void {
  let still = { s: 0, m: 0 };
  const stand = (): void => {
    if (still.s >= limit('pauseLeast')) {
      sums.pauses += 1;
      sums.pauseS += still.s;
    } else sums.distanceM += still.m;
    still = { s: 0, m: 0 };
  };
  let last = points[0]!;
  for (let at = 1; at < points.length; at++) {
    const reached = nextReached(points, last, at);
    const isJump = reached === undefined;
    if (!isJump) sums.spikes += reached - at;
    at = reached ?? at;
    const { s, m, speed } = stepOf(last, points[at]!);
    last = points[at]!;
    const isStill = !isJump && speed < limit('standBelow');
    if (isStill) still = { s: still.s + s, m: still.m + m };
    else stand();
    if (isStill) continue;
    if (isJump || s > limit('gapLeast')) {
      sums.gaps += 1;
      sums.gapS += s;
    }
    // across a jump nobody knows the way
    if (!isJump) sums.distanceM += m;
  }
  stand();
}

/**
 * One run of the tracks of a file: lengths along great circles between points of one segment, without the time in which nobody moved
 * and without points that nobody can have been at. Between segments the recording stood still: that is a pause, and no way.
 *
 * @param tracks - as they were written [-]
 * @param dayHere - day of the calendar of this device at a time [ms], for files that tell no clock of the place
 * @returns the run, its pauses, gaps and what was passed over
 * @throws {@link RunFileError} where there are no times, too few points, several days or no movement
 * Source: ours; each limit has its own source in the shared data
 */
export function runOfTracks(tracks: readonly Track[], dayHere: (ms: number) => string): TrackRun {
  const all = tracks.flat().flat();
  const timed = tracks.map((track) => track.map(timedOf).filter((one) => one.length > 0));
  const segments = timed.flat().toSorted((a, b) => a[0]!.timeMs - b[0]!.timeMs);
  const count = segments.flat().length;
  if (count === 0) throw new RunFileError('no-times', String(all.length));
  if (count < 2) throw new RunFileError('too-few', String(count));
  const dayOf = ({ timeMs, offsetMin }: Timed): string =>
    offsetMin === null ? dayHere(timeMs) : new Date(timeMs + 60_000 * offsetMin).toISOString().slice(0, 10);
  const days = new Set(timed.flatMap(([first]) => (first === undefined ? [] : [dayOf(first[0]!)])));
  if (days.size > 1) throw new RunFileError('several-days', [...days].sort().join(', '));
  const sums: Sums = { pauses: 0, pauseS: 0, gaps: 0, gapS: 0, distanceM: 0, spikes: 0 };
  let end = segments[0]![0]!.timeMs;
  for (const points of segments) {
    // segments that lie over one another are one recording written twice: only what is later counts
    const later = points.filter(({ timeMs }) => timeMs >= end);
    if (later.length === 0) continue;
    const breakS = (later[0]!.timeMs - end) / 1000;
    if (breakS > 0) {
      sums.pauses += 1;
      sums.pauseS += breakS;
    }
    addSegment(later, sums);
    end = later.at(-1)!.timeMs;
  }
  const first = segments[0]![0]!;
  const whole = (end - first.timeMs) / 1000;
  const [movingS, distanceM] = [Math.round(whole - sums.pauseS), Math.round(sums.distanceM)];
  if (movingS < 1 || distanceM < 1) throw new RunFileError('no-move', `${Math.round(whole)} s`);
  return {
    day: dayOf(first),
    dayBy: first.offsetMin === null ? 'device' : 'file',
    wholeS: Math.round(whole),
    movingS,
    distanceM,
    distanceErrorM: Math.round(limit('distanceError') * distanceM),
    pauses: sums.pauses,
    gaps: sums.gaps,
    gapS: Math.round(sums.gapS),
    spikes: sums.spikes,
    untimed: all.length - count,
    tracks: tracks.length,
    cadence: runCadence(all.map((point) => point.cadence)),
    isFast: distanceM / movingS > limit('rideFrom'),
  };
}
