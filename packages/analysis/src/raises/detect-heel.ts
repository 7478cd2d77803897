import type { Issue } from '../issue.ts';
import { tiltOfHeight } from '../movement/foot-lever.ts';
import { type FootGeometry, type HeelHeight, heelHeightOf, smoothLevel } from '../movement/heel-height.ts';
import { longestGapS } from '../signal/gaps.ts';
import { contains, type Interval } from '../signal/intervals.ts';
import type { Trace } from '../trace.ts';
import type { Detection, Doubtful, Motion, Raise } from './detection.ts';
import { findBumps } from './heel/bumps.ts';
import { countBounds } from './heel/count-bounds.ts';
import { findSet } from './heel/find-set.ts';
import { restLevel } from './heel/floor.ts';
import { type FloorLine, floorLine, restVotes } from './heel/floor-line.ts';
import type { HeelSettings } from './heel/heel-settings.ts';
import { heightUncertainty } from './heel/height-uncertainty.ts';
import type { Move } from './heel/move-model.ts';
import { restsBetween } from './heel/rests.ts';
import type { Judged } from './heel/set-isolation.ts';
import { chooseShapes } from './heel/shape-choice.ts';
import { heightOfDrawn, slantRelativeU } from './heel/string-slant.ts';
import { measureNoise } from './heel/sway-noise.ts';
import {
  type FitSignal,
  moveEndS,
  moveStartS,
  reachOf,
  type Stretch,
  samplesOf,
  stretchOf,
  type Timed,
  timeRepetition,
} from './heel/timing.ts';
import { unseenChances, unseenRoom, withUnseen } from './heel/unseen.ts';
import { unseenStretches, wentUnseen } from './unseen-stretch.ts';

interface Found {
  readonly judged: Judged;
  readonly stretch: Stretch;
  readonly timed: Timed;
}

/** More repetitions tell little more about the manner of a person; ours. */
const mostForShapes = 40;

/** Probability that the bounds of the count hold it [-]. */
const COVERAGE = 0.95;

/** The stretch with a fit that is known already for its first guess. */
function fitted(stretch: Stretch, move: Move | undefined): Stretch {
  return move === undefined ? stretch : { ...stretch, guess: move };
}

/**
 * The heel raises in a recording from a displacement sensor at the heel or an inertial sensor on the foot: the final
 * pass, which may look at the whole recording at once.
 *
 * @param trace - channel `heel-height`, or `acceleration` x, y, z with or without `angular-velocity` x, y, z [SI]
 * @param placement - which of the two [-]
 * @param foot - heel lever and rest length of the string, as far as known [m]
 * @param settings - see {@link HeelSettings} [SI]
 * @returns repetitions, doubtful movements, bounds of the count and the height over time [SI]
 * @throws {@link InputError} `missing-channel` when the trace lacks what the placement needs
 *
 * Source: ours
 */
export function detectHeelRaises(
  trace: Trace,
  placement: 'heel' | 'foot',
  foot: FootGeometry,
  settings: HeelSettings,
): Detection {
  const height = heelHeightOf(trace, placement, foot, settings);
  const { grid, levelM } = height;
  const timeOf = (index: number): number => grid.startS + index / grid.sampleRateHz;
  const smooth = smoothLevel(levelM, grid.sampleRateHz, settings.bumpCutoffHz);
  const turns = findBumps(smooth, settings.stillRangeM);
  const restM = restLevel(smooth, turns, grid.sampleRateHz, settings) ?? 0;
  const usual: FitSignal = {
    startS: grid.startS,
    sampleRateHz: grid.sampleRateHz,
    levelM,
    known: height.known,
    smoothM: smooth,
    turns,
    noise: { swaySdM: settings.noise.usualSwayM, swayTimeS: settings.noise.usualSwayTimeS, whiteSdM: 0.001 },
  };
  const judged = findSet(usual, height, restM, greatestHeight(height, foot, settings), settings);
  const members = judged.filter((one) => one.accepted && one.candidate.heightM >= settings.leastHeightM);
  const whole: Interval = { fromS: timeOf(0), toS: timeOf(grid.count - 1) };
  const stretches = members.map((one) => stretchOf(one.candidate, usual));
  const guessed = restsBetween(
    stretches.map((stretch) => stretch.guess),
    judged,
    timeOf,
    whole,
  );
  const firstFloor = floorLine(
    restVotes(smooth, grid.startS, grid.sampleRateHz, guessed, settings.floor),
    restM,
    0.001,
    settings.floor,
    stretches.map(({ guess }) => ({ timeS: (guess.highFromS + guess.highToS) / 2, level: guess.top })),
  );
  const signal: FitSignal = {
    ...usual,
    noise: measureNoise(levelM, grid.startS, grid.sampleRateHz, guessed, firstFloor.at, {
      ...settings.noise,
      // a fused or low-passed tilt hides its quick noise, the more so without a gyroscope
      ...(height.foot === undefined
        ? {}
        : { leastWhiteM: settings.noise.leastWhiteFootM * (height.foot.accelerometerOnly ? 3 : 1) }),
    }),
  };
  const reaches = stretches.map((stretch, i) =>
    reachOf(
      stretch,
      moveEndS(members[i - 1]?.candidate, signal),
      moveStartS(members[i + 1]?.candidate, signal),
      signal,
    ),
  );
  const plain = stretches.map((_, i) => i).filter((i) => stretches[i].highs.length === 1);
  const some = plain.filter((_, k) => k % Math.ceil(plain.length / mostForShapes) === 0);
  const chosen = chooseShapes(
    some.map((i) => samplesOf(signal, reaches[i][0], reaches[i][1])),
    some.map((i) => stretches[i].guess),
    settings,
  );
  const found: Found[] = stretches.map((stretch, i) => ({
    judged: members[i],
    stretch,
    timed: timeRepetition(fitted(stretch, chosen.moves[some.indexOf(i)]), reaches[i], signal, chosen),
  }));
  const rests = restsBetween(
    found.map(({ timed }) => timed),
    judged,
    timeOf,
    whole,
  );
  const votes = restVotes(smooth, grid.startS, grid.sampleRateHz, rests, settings.floor);
  const floor = floorLine(
    votes,
    restM,
    0.001,
    settings.floor,
    found.map(({ timed }) => ({ timeS: timed.topS, level: timed.topM })),
  );
  const stillSdM = stillSpread(signal, rests, floor, floor.scatterM);
  const lever = height.heelLeverM;
  const above = (level: number, base: number): number =>
    placement === 'heel'
      ? heightOfDrawn(level - base, lever, foot)
      : lever * Math.sin(tiltOfHeight(level, 0, lever) - tiltOfHeight(base, 0, lever));
  const seen = found.map(({ judged: one, timed }): Raise => {
    const base = floor.at(timed.topS);
    const heightM = above(timed.topM, base);
    const inGap = height.longGaps.some((gap) => contains(gap, timed.topS));
    return {
      startS: timed.startS,
      startUS: timed.startU,
      topS: timed.topS,
      topUS: timed.topU,
      endS: timed.endS,
      endUS: timed.endU,
      highFromS: timed.highFromS,
      highToS: timed.highToS,
      heightM,
      heightUM: heightUncertainty({
        placement,
        accelerometerOnly: height.foot?.accelerometerOnly ?? false,
        heightM,
        heelLeverM: lever,
        leverAssumed: height.leverAssumed,
        stillSdM,
        residualSdM: timed.residualSdM,
        topUM: timed.topUM,
        floorUM: floor.uncertainty(timed.topS),
        settings,
      }),
      lowBeforeM: above(timed.beforeM, floor.at(timed.startS)),
      lowAfterM: above(timed.afterM, floor.at(timed.endS)),
      probability: one.probability,
      longestGapS: longestGapS(height.longGaps, timed.startS, timed.endS),
      topInGap: inGap,
    };
  });
  const slantU = placement === 'heel' ? slantRelativeU(seen, foot, settings) : 0;
  const unseen = unseenStretches(height.longGaps);
  const raises = withUnseen(
    seen
      .map((one) => ({ ...one, heightUM: Math.hypot(one.heightUM, slantU * one.heightM) }))
      .filter(({ startS, endS }) => !wentUnseen({ fromS: startS, toS: endS }, unseen)),
    height.longGaps,
  );
  const doubtful = judged
    .filter((one) => !members.includes(one))
    .map((one): Doubtful => {
      const { candidate, probability, reason } = one;
      const tooSmall = candidate.heightM < settings.leastHeightM;
      return {
        startS: timeOf(candidate.halfUpIndex) - candidate.upS,
        topS: timeOf(candidate.bump.topIndex),
        endS: timeOf(candidate.halfDownIndex) + candidate.downS,
        heightM: placement === 'heel' ? above(candidate.heightM, 0) : candidate.heightM,
        probability: Math.min(0.5, tooSmall ? 0.02 : probability),
        reason: tooSmall ? 'too-small' : reason,
      };
    });
  const { low, high } = countBounds(
    [
      ...raises.map((raise) => raise.probability),
      ...doubtful.map((one) => one.probability),
      ...unseenChances(raises, height.longGaps),
    ],
    COVERAGE,
  );
  const possible = judged.filter((one) => isPossibleSet(one, settings)).length;
  const stance = stanceBefore(rests, raises);
  return {
    raises,
    doubtful,
    // beside steps a bump alone may be the first of them: the heel leaves the floor before the forefoot does
    countLow: raises.length === 1 && judged.some(isStride) ? 0 : low,
    countHigh: Math.max(high + unseenRoom(raises, height.longGaps), possible),
    motion: motionOf(height, floor, above, settings),
    stance,
    stillSdM,
    issues: issuesOf(height, stance, raises, floor),
    ...(height.leverAssumed ? { leverAssumed: true } : {}),
  };
}

/** Whether a bump was left out with a set that may be one after all, and is as high as a repetition has to be. */
function isPossibleSet({ withItsSet, probability, candidate }: Judged, settings: HeelSettings): boolean {
  return withItsSet === true && probability > (1 - COVERAGE) / 2 && candidate.heightM >= settings.leastHeightM;
}

/** Whether a bump was left out as a step. */
function isStride({ accepted, reason }: Judged): boolean {
  return !accepted && reason === 'stride';
}

function greatestHeight(height: HeelHeight, foot: FootGeometry, settings: HeelSettings): number {
  const lever =
    foot.heelLeverM ?? (height.foot === undefined ? settings.longestHeelLeverM : settings.nominalHeelLeverM);
  return lever * Math.sin(settings.steepestRad);
}

function stillSpread(signal: FitSignal, rests: readonly Interval[], floor: FloorLine, limit: number): number {
  let squares = 0;
  let count = 0;
  for (const { fromS, toS } of rests) {
    if (toS - fromS < 0.4) continue;
    const from = Math.ceil((fromS - signal.startS) * signal.sampleRateHz);
    const to = Math.floor((toS - signal.startS) * signal.sampleRateHz);
    for (let i = Math.max(0, from); i < Math.min(to, signal.smoothM.length); i += 5) {
      const departure = signal.smoothM[i] - floor.at(signal.startS + i / signal.sampleRateHz);
      if (Math.abs(departure) > 6 * limit) continue;
      squares += departure * departure;
      count++;
    }
  }
  return count > 0 ? Math.sqrt(squares / count) : limit;
}

function stanceBefore(rests: readonly Interval[], raises: readonly Raise[]): Interval | undefined {
  const first = raises[0];
  if (first === undefined) return undefined;
  const before = rests.filter((rest) => rest.toS <= first.startS + 1e-6).at(-1);
  return before !== undefined && before.toS - before.fromS >= 0.5 ? before : undefined;
}

function motionOf(
  height: HeelHeight,
  floor: FloorLine,
  above: (level: number, base: number) => number,
  settings: HeelSettings,
): Motion {
  const { grid, levelM, longGaps, foot } = height;
  const filtered = smoothLevel(levelM, grid.sampleRateHz, settings.movementCutoffHz);
  const heightM = new Float64Array(grid.count);
  const step = Math.round(grid.sampleRateHz);
  let here = floor.at(grid.startS);
  for (let i = 0; i < grid.count; i += step) {
    const next = floor.at(grid.startS + (i + step) / grid.sampleRateHz);
    for (let k = i; k < Math.min(grid.count, i + step); k++) {
      heightM[k] = above(filtered[k], here + ((next - here) * (k - i)) / step);
    }
    here = next;
  }
  for (const { fromS, toS } of longGaps) {
    const from = Math.ceil((fromS - grid.startS) * grid.sampleRateHz + 1e-6);
    const to = Math.ceil((toS - grid.startS) * grid.sampleRateHz - 1e-6);
    if (to > from) heightM.fill(Number.NaN, Math.max(0, from), Math.min(grid.count, to));
  }
  return {
    kind: 'heel-height',
    startS: grid.startS,
    sampleRateHz: grid.sampleRateHz,
    heightM,
    gaps: longGaps,
    ...(foot === undefined ? {} : { pitchRad: foot.pitchRad, accelerationExcess: foot.excess }),
  };
}

function issuesOf(
  height: HeelHeight,
  stance: Interval | undefined,
  raises: readonly Raise[],
  floor: FloorLine,
): Issue[] {
  const issues = [...height.issues];
  for (const { timeS, stepM } of floor.steps) {
    issues.push({
      code: 'sensor-moved',
      severity: 'warning',
      fromS: timeS,
      toS: timeS,
      details: { stepMm: stepM * 1000 },
    });
  }
  for (const { fromS, toS } of height.longGaps) {
    issues.push({ code: 'gap', severity: 'warning', fromS, toS, details: { lengthS: toS - fromS } });
  }
  const first = raises[0];
  if (first !== undefined && stance === undefined) {
    issues.push({ code: 'no-quiet-stance', severity: 'warning', fromS: first.startS, toS: first.startS });
  }
  return issues;
}
