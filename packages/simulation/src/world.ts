import { secondDerivative } from './derivatives.ts';
import type { FaultAmounts } from './fault-table.ts';
import { bodyRise, heelHeight } from './foot-lever.ts';
import { sway } from './noise.ts';
import type { Person } from './person.ts';
import type { Random } from './random.ts';
import type { TrueRepetition } from './repetition-plan.ts';
import type { Move } from './smooth-move.ts';
import type { Surroundings } from './surroundings.ts';
import { addArch, addBobbing, addHit, addHump, addPlateau, drawMoves, worldRateHz } from './world-shapes.ts';

/** What happens, on a fine regular grid, before any sensor looks at it. */
export interface World {
  readonly sampleRateHz: number;
  readonly count: number;
  /** elevation of the foot line, sway included [rad] */
  readonly pitchRad: Float64Array;
  /** place of the metatarsal heads, forward and up [m] */
  readonly forwardM: Float64Array;
  readonly upM: Float64Array;
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

/** What the world of one recording is made of. */
export interface WorldParts {
  readonly person: Person;
  readonly faults: FaultAmounts;
  /** moves of the foot's pitch by which the body rises, in time order [rad] */
  readonly moves: readonly Move[];
  readonly repetitions: readonly TrueRepetition[];
  readonly surroundings: Surroundings;
  readonly lengthS: number;
}

/**
 * The world of one recording: foot, body, trunk and load on a fine grid.
 *
 * @param parts - person, faults, moves, surroundings and length [SI]
 * @param random - stream to draw from [-]
 * @returns arrays of one length [SI]
 *
 * Source: lever geometry; faults are ours
 */
export function buildWorld(parts: WorldParts, random: Random): World {
  const { person, faults, moves, repetitions, surroundings, lengthS } = parts;
  const { foot } = person;
  const count = Math.ceil(lengthS * worldRateHz);
  const zeros = (): Float64Array => new Float64Array(count);
  const world = {
    sampleRateHz: worldRateHz,
    count,
    pitchRad: zeros(),
    forwardM: zeros(),
    upM: zeros(),
    pullM: zeros(),
    bodyM: zeros(),
    trunkForward: zeros(),
    trunkPitchRad: zeros(),
    hit: zeros(),
    load: zeros(),
  };
  drawMoves(world.pitchRad, moves, foot.restPitchRad);
  for (let i = 0; i < count; i++) world.bodyM[i] = bodyRise(foot, world.pitchRad[i]);
  addHabits(world, person, faults, random);
  for (const repetition of repetitions) addHelp(world, repetition, faults, random);
  addSurroundings(world, surroundings, random);
  const heelSway = sway(count, worldRateHz, faults.swayHeelM, faults.swayCornerHz, random);
  for (let i = 0; i < count; i++) {
    world.pitchRad[i] += heelSway[i] / (foot.heelLeverM * Math.cos(world.pitchRad[i]));
  }
  const heelM = world.pitchRad.map((pitch, i) => heelHeight(foot, pitch) + world.upM[i]);
  return { ...world, heelM };
}

type Draft = Omit<World, 'heelM'>;

/** Lean and tilt of the trunk, hands on the wall. */
function addHabits(world: Draft, person: Person, faults: FaultAmounts, random: Random): void {
  const { count, bodyM, trunkPitchRad, load } = world;
  const fullRise = bodyRise(person.foot, person.foot.restPitchRad + person.topPitchRad);
  const support = sway(count, worldRateHz, 0.4, faults.swayCornerHz, random);
  for (let i = 0; i < count; i++) {
    trunkPitchRad[i] = (faults.leanRad * i) / count + faults.pelvicTiltRad * (bodyM[i] / fullRise);
    load[i] = 1 - faults.handSupport * Math.max(0, 0.5 + support[i]);
  }
}

/** Bent knee, pushing hands and hits of the heel in one repetition. */
function addHelp(world: Draft, repetition: TrueRepetition, faults: FaultAmounts, random: Random): void {
  const { startS, highFromS, endS } = repetition;
  if (repetition.kneeAssist) addHump(world.bodyM, startS - 0.3, startS + 0.6 * (highFromS - startS), -faults.kneeBendM);
  if (repetition.handPush > 0) addPlateau(world.load, startS, highFromS, 0.2, -repetition.handPush);
  if (repetition.heelImpact) addHit(world.hit, endS - 0.02, faults.heelImpactSpeed, random);
}

function addSurroundings(world: Draft, surroundings: Surroundings, random: Random): void {
  const { count } = world;
  const carried = new Float64Array(count);
  drawMoves(carried, surroundings.pitch, 0);
  drawMoves(world.forwardM, surroundings.forward, 0);
  const loadFactor = new Float64Array(count);
  drawMoves(loadFactor, surroundings.load, surroundings.load[0]?.from ?? 1);
  for (let i = 0; i < count; i++) {
    world.pitchRad[i] += carried[i];
    world.load[i] *= loadFactor[i];
  }
  for (const { fromS, toS, size } of surroundings.lifts) addHump(world.upM, fromS, toS, size);
  for (const { fromS, toS, size, power } of surroundings.pulls) addArch(world.pullM, fromS, toS, size, power);
  for (const { fromS, toS, size } of surroundings.loadShifts) addHump(world.load, fromS, toS, size);
  for (const { atS, speed } of surroundings.hits) addHit(world.hit, atS, speed, random);
  for (const { fromS, toS, size } of surroundings.squats) addHump(world.bodyM, fromS, toS, size);
  const sideways = new Float64Array(count);
  for (const { fromS, toS, stepHz, sizeM } of surroundings.gait) {
    addBobbing(world.bodyM, fromS, toS, stepHz, sizeM);
    addBobbing(sideways, fromS, toS, stepHz, 0.7 * sizeM); // braking and pushing in step with the bobbing
  }
  world.trunkForward.set(secondDerivative(sideways, worldRateHz));
}
