import type { FaultAmounts } from './fault-table.ts';
import { bodyRise, heelHeight } from './foot-lever.ts';
import { sway } from './noise.ts';
import type { Person } from './person.ts';
import type { Random } from './random.ts';
import type { PitchMove, TrueRepetition } from './repetition-plan.ts';
import { wayGone } from './smooth-move.ts';

/** What happens, on a fine regular grid, before any sensor looks at it. */
export interface World {
  readonly sampleRateHz: number;
  readonly count: number;
  /** elevation of the foot line, sway included [rad] */
  readonly pitchRad: Float64Array;
  /** place of the metatarsal heads, forward and up [m] */
  readonly forwardM: Float64Array;
  readonly upM: Float64Array;
  /** sideways acceleration of the foot [m/s2] */
  readonly footLeft: Float64Array;
  /** way the string is drawn by a hand and not by the heel [m] */
  readonly pullM: Float64Array;
  /** height of the heel above its level at rest, sway included [m] */
  readonly heelM: Float64Array;
  /** rise of the body above the quiet stance, without wobble [m] */
  readonly bodyM: Float64Array;
  /** forward acceleration of the trunk [m/s2] */
  readonly trunkForward: Float64Array;
  /** pitch of the trunk [rad] */
  readonly trunkPitchRad: Float64Array;
  /** acceleration by hits of the heel, for a body of one piece [m/s2] */
  readonly hit: Float64Array;
  /** share of body weight on the platform [-] */
  readonly load: Float64Array;
}

/** Samples per second of the world [Hz]. */
export const worldRateHz = 500;

/** Writes smooth moves into an array of levels; between moves the last level stays. */
export function drawMoves(target: Float64Array, moves: readonly PitchMove[], startLevel: number): void {
  let level = startLevel;
  let index = 0;
  for (const move of moves) {
    const from = Math.ceil(move.fromS * worldRateHz);
    const to = Math.ceil(move.toS * worldRateHz);
    while (index < Math.min(from, target.length)) target[index++] = level;
    while (index < Math.min(to, target.length)) {
      const gone = wayGone(move.shape, (index / worldRateHz - move.fromS) / (move.toS - move.fromS));
      target[index++] = move.fromRad + gone * (move.toRad - move.fromRad);
    }
    level = move.toRad;
  }
  while (index < target.length) target[index++] = level;
}

/** Adds a smooth there-and-back of the given size: 0 at both ends, full in the middle. */
function addHump(target: Float64Array, fromS: number, toS: number, size: number): void {
  const from = Math.max(0, Math.ceil(fromS * worldRateHz));
  const to = Math.min(target.length, Math.ceil(toS * worldRateHz));
  for (let i = from; i < to; i++) {
    const u = (i / worldRateHz - fromS) / (toS - fromS);
    const hump = 64 * (u * (1 - u)) ** 3; // three vanishing derivatives at both ends
    target[i] = target[i]! + size * hump;
  }
}

/** Adds a level that is reached at `fromS`, left at `toS`, each within `edgeS`. */
function addPlateau(target: Float64Array, fromS: number, toS: number, edgeS: number, size: number): void {
  const shape = { kind: 'minimum-jerk', skew: 0, share: 0 } as const;
  const from = Math.max(0, Math.floor((fromS - edgeS) * worldRateHz));
  const to = Math.min(target.length, Math.ceil((toS + edgeS) * worldRateHz));
  for (let i = from; i < to; i++) {
    const timeS = i / worldRateHz;
    const on = wayGone(shape, (timeS - fromS + edgeS) / edgeS);
    const off = wayGone(shape, (timeS - toS) / edgeS);
    target[i] = target[i]! + size * (on - off);
  }
}

/** A hit that takes `speed` away from the body: a short push with a ringing tail, whose area is the speed. */
function addHit(target: Float64Array, atS: number, speed: number, random: Random): void {
  const ringHz = random.between(15, 35);
  const decayS = random.between(0.015, 0.04);
  const turn = 2 * Math.PI * ringHz;
  const area = turn / (turn * turn + 1 / (decayS * decayS)); // integral of exp(-t/d) sin(w t)
  const from = Math.ceil(atS * worldRateHz);
  for (let i = from; i < Math.min(target.length, from + worldRateHz / 4); i++) {
    const t = i / worldRateHz - atS;
    target[i] = target[i]! + (speed / area) * Math.exp(-t / decayS) * Math.sin(turn * t);
  }
}

/**
 * The world of one recording: foot, body, trunk and load on a fine grid.
 *
 * @param person - body and habits [kg, m, rad, s]
 * @param faults - amounts of sway, lean, tilt, hand support, knee assist and hits [unit of the row]
 * @param moves - moves of the foot's pitch in time order [rad]
 * @param repetitions - their truth [s, m]
 * @param lengthS - length of the recording [s]
 * @param random - stream to draw from [-]
 * @returns arrays of one length [SI]
 *
 * Source: lever geometry; faults are ours
 */
export function buildWorld(
  person: Person,
  faults: FaultAmounts,
  moves: readonly PitchMove[],
  repetitions: readonly TrueRepetition[],
  lengthS: number,
  random: Random,
): World {
  const { foot } = person;
  const count = Math.ceil(lengthS * worldRateHz);
  const pitchRad = new Float64Array(count);
  drawMoves(pitchRad, moves, foot.restPitchRad);
  const bodyM = pitchRad.map((pitch) => bodyRise(foot, pitch));
  const trunkPitchRad = new Float64Array(count);
  const hit = new Float64Array(count);
  const load = new Float64Array(count).fill(1);
  const fullRise = bodyRise(foot, foot.restPitchRad + person.topPitchRad);
  const support = sway(count, worldRateHz, 0.4, random);
  for (let i = 0; i < count; i++) {
    trunkPitchRad[i] = (faults.leanRad * i) / count + faults.pelvicTiltRad * (bodyM[i]! / fullRise);
    load[i] = 1 - faults.handSupport * Math.max(0, 0.5 + support[i]!);
  }
  for (const repetition of repetitions) {
    const { startS, highFromS, endS } = repetition;
    if (repetition.kneeAssist) addHump(bodyM, startS - 0.3, startS + 0.6 * (highFromS - startS), -faults.kneeBendM);
    if (repetition.handPush > 0) addPlateau(load, startS, highFromS, 0.2, -repetition.handPush);
    if (repetition.heelImpact) addHit(hit, endS - 0.02, faults.heelImpactSpeed, random);
  }
  const heelSway = sway(count, worldRateHz, faults.swayHeelM, random);
  for (let i = 0; i < count; i++)
    pitchRad[i] = pitchRad[i]! + heelSway[i]! / (foot.heelLeverM * Math.cos(pitchRad[i]!));
  return {
    sampleRateHz: worldRateHz,
    count,
    pitchRad,
    forwardM: new Float64Array(count),
    upM: new Float64Array(count),
    footLeft: new Float64Array(count),
    pullM: new Float64Array(count),
    heelM: pitchRad.map((pitch) => heelHeight(foot, pitch)),
    bodyM,
    trunkForward: new Float64Array(count),
    trunkPitchRad,
    hit,
    load,
  };
}
