import type { FaultAmounts } from './fault-table.ts';
import type { FootLever } from './foot-lever.ts';
import type { Random } from './random.ts';
import type { MoveShape } from './smooth-move.ts';

/** Who stands there and how this person moves. */
export interface Person {
  readonly bodyMassKg: number;
  readonly foot: FootLever;
  /** greatest pitch above rest of a fresh repetition [rad] */
  readonly topPitchRad: number;
  /** usual duration of one repetition with the usual stay at the bottom [s] */
  readonly cycleS: number;
  /** shares of the cycle: up, held high, down, stay at the bottom; sum 1 [-] */
  readonly shares: readonly [up: number, hold: number, down: number, low: number];
  readonly upShape: MoveShape;
  readonly downShape: MoveShape;
}

/** How far people differ in tempo and in the time they hold the top [-]. */
export type Habits = Pick<FaultAmounts, 'ownTempoChance' | 'beatSpread' | 'longHoldChance'>;

const shapeKinds = [
  ['minimum-jerk', 0.5],
  ['two-phase', 0.15],
  ['minimum-snap', 0.12],
  ['cosine', 0.13],
  ['plateau', 0.1],
] as const;

function drawShape(random: Random): MoveShape {
  return {
    kind: random.weighted(shapeKinds),
    skew: random.between(-0.15, 0.15),
    share: random.between(0.35, 0.5),
  };
}

/** Cycle of the usual beat, 30 repetitions a minute [s]. */
const beatS = 2;

function drawCycle(random: Random, habits: Habits): number {
  if (random.chance(habits.ownTempoChance)) return random.logBetween(0.6, 6);
  return beatS * Math.exp(habits.beatSpread * random.boundedGaussian());
}

/**
 * A person drawn at random: mass, foot, greatest pitch, tempo and shapes of movement.
 *
 * @param random - stream to draw from [-]
 * @param habits - how far people differ [-]
 * @returns body and habits [kg, m, rad, s]
 *
 * Source: ours; foot proportions of a 26 cm foot: lever 18.6 cm, ankle 13 cm behind and 7 cm above the metatarsal heads
 */
export function drawPerson(random: Random, habits: Habits): Person {
  const footLengthM = random.between(0.225, 0.29);
  const heelLeverM = footLengthM * random.between(0.71, 0.72);
  const behindM = footLengthM * random.between(0.48, 0.52);
  const aboveM = footLengthM * random.between(0.255, 0.285);
  const foot = {
    heelLeverM,
    ankleLeverM: Math.hypot(behindM, aboveM),
    ankleAngleRad: Math.atan2(aboveM, behindM),
    restPitchRad: 0,
    pivotMigration: 0,
  };
  const cycleS = drawCycle(random, habits);
  const up = random.between(0.8, 1.2);
  const down = random.between(0.8, 1.3);
  const brief = random.chance(0.3) ? random.between(0, 0.05) : random.between(0.05, 0.35);
  const hold = random.chance(habits.longHoldChance) ? random.between(0.35, 0.9) : brief;
  const low = random.between(0.05, 0.7);
  const upShape = drawShape(random);
  const ownDownShape = drawShape(random);
  const sum = up + hold + down + low;
  // most people go down in the manner they come up, and who nears the top slowly also leaves it slowly
  const mirrored = { ...upShape, skew: random.between(-0.05, 0.05) - upShape.skew };
  const downShape = random.chance(0.9) ? mirrored : ownDownShape;
  return {
    bodyMassKg: random.between(50, 100),
    foot,
    topPitchRad:
      (Math.PI / 180) *
      random.weighted([
        [random.between(30, 42), 0.7],
        [random.between(20, 50), 0.3],
      ]),
    cycleS,
    shares: [up / sum, hold / sum, down / sum, low / sum],
    upShape,
    downShape,
  };
}
