import { InputError } from '../errors.ts';
import type { Issue } from '../issue.ts';
import type { Grid } from '../signal/grid.ts';
import { gridOver, medianRateHz } from '../signal/grid.ts';
import { type Interval, mergeIntervals } from '../signal/intervals.ts';
import { lowPassZeroPhase } from '../signal/lowpass.ts';
import type { Placement, Trace } from '../trace.ts';
import { findTrack, ontoGrid, type SignalTrack, trackGaps, withoutSpikes } from './heel-height-grid.ts';
import type { VectorSignal } from './orientation.ts';
import { type FootPitch, footPitch, type PitchSettings } from './pitch.ts';

export interface HeelHeightSettings {
  readonly workingRateHz: number;
  readonly movementCutoffHz: number;
  readonly longGapS: number;
  readonly nominalHeelLeverM: number;
  readonly spikeM: number;
  readonly spikeAcceleration: number;
  readonly spikeRate: number;
  readonly pitch: PitchSettings;
}

export interface FootGeometry {
  /** metatarsal heads to heel [m] */
  readonly heelLeverM?: number;
  /** length of the string at rest, when its base stands on the floor [m] */
  readonly stringRestLengthM?: number;
}

/** Height of the heel as the sensor gives it, before any floor is taken off. */
export interface HeelHeight {
  readonly grid: Grid;
  /** heel sensor: its reading, whose slant is taken off with the floor; foot sensor: lever times sine of the pitch [m] */
  readonly levelM: Float64Array;
  /** pitch and accelerations of the foot; undefined for a heel sensor */
  readonly foot: FootPitch | undefined;
  readonly heelLeverM: number;
  readonly leverAssumed: boolean;
  /** 1 where samples were recorded, 0 inside gaps of any length */
  readonly known: Float64Array;
  /** stretches without samples that are too long to judge [s] */
  readonly longGaps: readonly Interval[];
  readonly issues: readonly Issue[];
}

function spikeIssue(spikesS: readonly number[]): Issue[] {
  if (spikesS.length === 0) return [];
  return [
    {
      code: 'spikes',
      severity: 'note',
      fromS: spikesS[0],
      toS: spikesS.at(-1)!,
      details: { count: spikesS.length },
    },
  ];
}

/** The samples of a track with those outside of gaps marked 1. */
function knownOnGrid(grid: Grid, gaps: readonly Interval[]): Float64Array {
  const known = new Float64Array(grid.count).fill(1);
  for (const { fromS, toS } of gaps) {
    const from = Math.max(0, Math.ceil((fromS - grid.startS) * grid.sampleRateHz + 1e-6));
    const to = Math.min(grid.count, Math.floor((toS - grid.startS) * grid.sampleRateHz - 1e-6) + 1);
    if (to > from) known.fill(0, from, to);
  }
  return known;
}

/** A stretch of this length without samples is no longer bridged as if it had some [s]. */
function shortestGapS(track: SignalTrack): number {
  return Math.max(0.04, 3 / medianRateHz(track.timesS));
}

function missing(what: string): InputError {
  return new InputError('missing-channel', {
    argument: 'trace',
    expected: what,
    actual: 'none with two samples or more',
  });
}

function workingGrid(track: SignalTrack, settings: HeelHeightSettings): Grid {
  return gridOver(track.timesS, settings.workingRateHz);
}

/**
 * Height of the heel on a regular grid from a displacement sensor at the heel.
 *
 * @param trace - with a channel of heel height [m]
 * @param foot - lever and string, as far as known [m]
 * @param settings - see {@link HeelHeightSettings} [-]
 * @returns height and what was found beside it [m]
 * @throws {@link InputError} `missing-channel` when the trace has no heel height
 *
 * Source: ours
 */
function fromString(trace: Trace, foot: FootGeometry, settings: HeelHeightSettings): HeelHeight {
  const track = findTrack(trace, 'heel-height', [null]);
  if (track === undefined) throw missing('a heel-height channel');
  const grid = workingGrid(track, settings);
  const clean = withoutSpikes(track, { leastDistance: settings.spikeM, timesUsual: 10 });
  const [reading] = ontoGrid({ timesS: track.timesS, parts: clean.parts }, grid);
  const heelLeverM = foot.heelLeverM ?? settings.nominalHeelLeverM;
  return {
    grid,
    levelM: reading,
    foot: undefined,
    known: knownOnGrid(grid, trackGaps(track, shortestGapS(track))),
    heelLeverM,
    leverAssumed: false,
    longGaps: trackGaps(track, settings.longGapS),
    issues: spikeIssue(clean.spikesS),
  };
}

/** Height of the heel on a regular grid from an inertial sensor on the foot. */
function fromFoot(trace: Trace, foot: FootGeometry, settings: HeelHeightSettings): HeelHeight {
  const force = findTrack(trace, 'acceleration', ['x', 'y', 'z']);
  if (force === undefined) throw missing('acceleration x, y and z');
  const angular = findTrack(trace, 'angular-velocity', ['x', 'y', 'z']);
  const grid = workingGrid(force, settings);
  const cleanForce = withoutSpikes(force, { leastDistance: settings.spikeAcceleration, timesUsual: 12 });
  const forceParts = ontoGrid({ timesS: force.timesS, parts: cleanForce.parts }, grid);
  let turning: Float64Array[] | undefined;
  let spikesS = cleanForce.spikesS;
  if (angular !== undefined) {
    const clean = withoutSpikes(angular, { leastDistance: settings.spikeRate, timesUsual: 12 });
    turning = ontoGrid({ timesS: angular.timesS, parts: clean.parts }, grid);
    spikesS = [...spikesS, ...clean.spikesS].sort((a, b) => a - b);
  }
  const known = knownOnGrid(grid, trackGaps(force, shortestGapS(force)));
  const heelLeverM = foot.heelLeverM ?? settings.nominalHeelLeverM;
  const pitch = footPitch(
    forceParts as unknown as VectorSignal,
    turning as unknown as VectorSignal | undefined,
    known,
    grid.sampleRateHz,
    settings.pitch,
  );
  const longGaps = mergeIntervals([
    ...trackGaps(force, settings.longGapS),
    ...(angular === undefined ? [] : trackGaps(angular, settings.longGapS)),
  ]);
  const issues: Issue[] = spikeIssue(spikesS);
  for (const { index, turnRad } of pitch?.slips ?? []) {
    const atS = grid.startS + index / grid.sampleRateHz;
    issues.push({
      code: 'sensor-moved',
      severity: 'warning',
      fromS: atS,
      toS: atS,
      details: { turnDeg: (turnRad * 180) / Math.PI },
    });
  }
  if (pitch?.accelerometerOnly === true) {
    const endS = grid.startS + (grid.count - 1) / grid.sampleRateHz;
    issues.push({ code: 'accelerometer-only', severity: 'note', fromS: grid.startS, toS: endS });
  }
  return {
    grid,
    levelM:
      pitch === undefined
        ? new Float64Array(grid.count)
        : pitch.pitchRad.map((angle) => heelLeverM * Math.sin(Math.max(-Math.PI / 2, Math.min(Math.PI / 2, angle)))),
    foot: pitch,
    known,
    heelLeverM,
    leverAssumed: foot.heelLeverM === undefined,
    longGaps,
    issues,
  };
}

/**
 * Height of the heel on a regular grid, before any floor is taken off.
 *
 * @param trace - recording with the channels of the placement [SI]
 * @param placement - `heel`: displacement sensor; `foot`: inertial sensor [-]
 * @param foot - lever and string, as far as known [m]
 * @param settings - see {@link HeelHeightSettings} [-]
 * @returns height and what was found beside it [m]
 * @throws {@link InputError} `missing-channel` when the trace lacks what the placement needs
 *
 * Source: ours
 */
export function heelHeightOf(
  trace: Trace,
  placement: Extract<Placement, 'heel' | 'foot'>,
  foot: FootGeometry,
  settings: HeelHeightSettings,
): HeelHeight {
  return placement === 'heel' ? fromString(trace, foot, settings) : fromFoot(trace, foot, settings);
}

/**
 * The level low-passed without lag; a recording too short for the filter comes back as it is.
 *
 * @param levelM - level on the working grid [m]
 * @param sampleRateHz - its rate [Hz]
 * @param cutoffHz - frequency of half power [Hz]
 * @returns the smooth level [m]
 *
 * Source: Winter (2009), Biomechanics and Motor Control of Human Movement, 4th ed.
 */
export function smoothLevel(levelM: Float64Array, sampleRateHz: number, cutoffHz: number): Float64Array {
  return levelM.length < 4 ? Float64Array.from(levelM) : lowPassZeroPhase(levelM, sampleRateHz, cutoffHz);
}
