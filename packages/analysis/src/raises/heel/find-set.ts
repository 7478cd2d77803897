import type { HeelHeight } from '../../movement/heel-height.ts';
import { median } from '../../signal/order-statistics.ts';
import { startsAtSpeed } from './at-speed.ts';
import { joinBumps, type Turning } from './bumps.ts';
import { type Candidate, describeBumps } from './candidate.ts';
import type { HeelSettings } from './heel-settings.ts';
import { minimumJerk, moveShape } from './move-shape.ts';
import { isolateSet, type Judged } from './set-isolation.ts';
import { type FitSignal, moveEndS, moveStartS, reachOf, samplesOf, stretchOf } from './timing.ts';

/**
 * Smooth shapes that stand for a body: usual, abrupt, abrupt at its beginning alone, soft, and in two strokes. Who pushes off at once
 * nears the top slowly.
 */
const bodyShapes = [
  minimumJerk,
  { ...minimumJerk, start: 1, end: 1 },
  { ...minimumJerk, start: 1, end: 3 },
  { ...minimumJerk, start: 3, end: 3 },
  { ...minimumJerk, start: 2.7, end: 2.7, spread: 6 },
].map((exponents) => moveShape(exponents));

/** Bumps from either end of the recording that are looked at for a start at speed: strings are hooked on there. */
const edgeCount = 8;

/** Fewer repetitions show no rhythm. */
const leastForRhythm = 4;

/**
 * Share of its height that a high must fall before the next one is a repetition of its own. The rule of half is made
 * easier for highs a whole beat apart and harder for highs that follow each other at once.
 */
function fallRule(apartS: number, usualS: number | undefined, leastFall: number): number {
  if (usualS === undefined) return leastFall;
  const beats = apartS / usualS;
  // from 0.35 beats (1.4 of the rule) to 0.75 beats (0.7 of it)
  return leastFall * (1.4 - 0.7 * Math.min(1, Math.max(0, (beats - 0.35) / 0.4)));
}

/**
 * The bumps of a recording with the verdict which of them are repetitions of the set.
 *
 * Highs are joined over their dips first by the rule of half alone; once the set shows its rhythm they are joined again
 * with it in view.
 *
 * @param signal - level and turns [m]
 * @param height - gaps and accelerations of the recording [s, m/s2]
 * @param restM - level at rest [m]
 * @param greatestHeightM - highest that the heel can get with the forefoot down [m]
 * @param settings - see {@link HeelSettings} [SI]
 * @returns verdicts in time order [-]
 *
 * Source: ours
 */
export function findSet(
  signal: FitSignal,
  height: HeelHeight,
  restM: number,
  greatestHeightM: number,
  settings: HeelSettings,
): Judged[] {
  const { sampleRateHz, startS } = signal;
  const timeOf = (index: number): number => startS + index / sampleRateHz;
  const inGap = (index: number): boolean =>
    height.longGaps.some((gap) => timeOf(index) > gap.fromS - 0.05 && timeOf(index) < gap.toS + 0.05);
  const candidatesFor = (usualS: number | undefined): Candidate[] => {
    const joined = joinBumps(signal.turns, (high: Turning) => {
      const rule = fallRule(Math.abs(high.beyondIndex - high.index) / sampleRateHz, usualS, settings.leastFall);
      // Inside a gap the heel may have gone lower than the bridge across it shows.
      return (inGap(high.lowIndex) ? rule / 3 : rule) * (high.level - restM);
    });
    return describeBumps(joined, signal.smoothM, restM, sampleRateHz, height.foot).filter(
      (one) => Math.min(one.heightM, one.ownRiseM) > settings.leastHeightM / 2,
    );
  };
  const judge = (candidates: readonly Candidate[]): Judged[] => {
    const judged = isolateSet(
      candidates,
      candidates.map((one) => timeOf(one.bump.topIndex)),
      height.foot === undefined ? speedEvidence(candidates, signal) : candidates.map(() => 0),
      { ...settings, greatestHeightM },
    );
    return noLever(judged, height) ? judged.map(refused) : judged;
  };
  const first = judge(candidatesFor(undefined));
  const tops = first.filter((one) => one.accepted).map((one) => timeOf(one.candidate.bump.topIndex));
  if (tops.length < leastForRhythm) return first;
  const again = candidatesFor(median(tops.slice(1).map((top, i) => top - tops[i])));
  const same =
    again.length === first.length && again.every((one, i) => one.bump.topIndex === first[i].candidate.bump.topIndex);
  return same ? first : judge(again);
}

/** Vertical acceleration that a quiet forefoot may leave unexplained [m/s2], and its share of the whole [-]; ours. */
const [quietAcceleration, leverShare] = [0.3, 0.6];

/**
 * True when what was taken for a set cannot be a foot turning about its forefoot: the sensor is shaken up and down, and
 * the turn does not explain it. Push-ups or squats with a telephone look like that.
 */
function noLever(judged: readonly Judged[], { foot }: HeelHeight): boolean {
  const members = judged.filter((one) => one.accepted).map((one) => one.candidate);
  if (foot === undefined || members.length < 3) return false;
  if (median(members.map((one) => one.unexplained ?? 0)) < quietAcceleration) return false;
  return foot.place.behindM < 0.02 || median(members.map((one) => one.unexplainedShare ?? 0)) > leverShare;
}

function refused(one: Judged): Judged {
  return { ...one, accepted: false, probability: Math.min(one.probability, 0.001), reason: 'stride' };
}

/** A whole set of many is never drawn by a hand: what most of its bumps show is the manner of the person. */
const leastForManner = 10;

function speedEvidence(candidates: readonly Candidate[], signal: FitSignal): number[] {
  const evidence = candidates.map((_, i) => atSpeed(candidates, i, signal));
  const looked = evidence.filter((value) => value !== 0);
  const manner = looked.length < leastForManner ? 0 : Math.max(0, median(looked));
  return evidence.map((value) => value - manner);
}

function atSpeed(candidates: readonly Candidate[], i: number, signal: FitSignal): number {
  if (i >= edgeCount && i < candidates.length - edgeCount) return 0;
  const stretch = stretchOf(candidates[i], signal);
  const [fromS, toS] = reachOf(
    stretch,
    moveEndS(candidates[i - 1], signal),
    moveStartS(candidates[i + 1], signal),
    signal,
  );
  return startsAtSpeed(samplesOf(signal, fromS, toS), stretch.guess, bodyShapes);
}
