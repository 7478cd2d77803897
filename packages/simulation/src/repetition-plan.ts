import type { FaultAmounts } from './fault-table.ts';
import { bodyRise, heelHeight } from './foot-lever.ts';
import type { Person } from './person.ts';
import type { Random } from './random.ts';
import type { Move, MoveShape } from './smooth-move.ts';

/** What is true of one repetition. */
export interface TrueRepetition {
  /** the foot begins to leave the bottom [s] */
  readonly startS: number;
  /** instant of greatest height; the middle when it is held [s] */
  readonly topS: number;
  /** back at the bottom [s] */
  readonly endS: number;
  /** height of the heel at the top above the quiet stance, without sway [m] */
  readonly heelHeightM: number;
  /** rise of the body at the top above the quiet stance, without sway [m] */
  readonly bodyRiseM: number;
  /** the hold at the top: from, to [s] */
  readonly highFromS: number;
  readonly highToS: number;
  /** heel height of the bottoms before and after [m] */
  readonly lowBeforeM: number;
  readonly lowAfterM: number;
  /** rise begun from a bent knee, helped by the hands, or ended with a hit of the heel */
  readonly kneeAssist: boolean;
  readonly handPush: number;
  readonly heelImpact: boolean;
  /** matched-filter signal-to-noise ratio of this repetition alone; trunk and platform [-] */
  readonly signalToNoise?: number;
}

/** The moves of a set and their truth. */
export interface RepetitionPlan {
  readonly moves: readonly Move[];
  readonly repetitions: readonly TrueRepetition[];
  readonly endS: number;
}

/** Body acceleration above which nobody moves in a heel raise; quick repetitions are lower for it [m/s2]. */
const greatestAcceleration = 6;

/** Nothing quicker or lower than this is simulated as a repetition [s], [m]; ours. */
const shortestS = 0.55;
const lowestM = 0.03;

/** Peak acceleration of a minimum-jerk move of unit way and time: 10/sqrt(3). */
const minimumJerkPeak = 10 / Math.sqrt(3);

function pitchOfRepetition(person: Person, share: number, upS: number): number {
  const { foot, topPitchRad } = person;
  const wanted = topPitchRad * share;
  const rise = bodyRise(foot, foot.restPitchRad + wanted);
  const possible = (greatestAcceleration * upS * upS) / minimumJerkPeak;
  return foot.restPitchRad + wanted * Math.min(1, possible / rise);
}

/**
 * The moves of a whole set, one after the other, and the truth of each repetition.
 *
 * @param person - body and habits [kg, m, rad, s]
 * @param faults - amounts of fatigue, spread, dips, pauses and the like [unit of the row]
 * @param count - repetitions, >= 0 [-]
 * @param beginS - the first repetition begins here [s]
 * @param random - stream to draw from [-]
 * @returns moves in time order, one truth for each repetition, end of the last [rad, s, m]
 *
 * Source: ours
 */
export function planRepetitions(
  person: Person,
  faults: FaultAmounts,
  count: number,
  beginS: number,
  random: Random,
): RepetitionPlan {
  const { foot, shares } = person;
  const rest = foot.restPitchRad;
  const moves: Move[] = [];
  const repetitions: TrueRepetition[] = [];
  const go = (fromS: number, toS: number, from: number, to: number, shape: MoveShape): void => {
    moves.push({ fromS, toS, from, to, shape });
  };
  let timeS = beginS;
  let bottom = rest;
  for (let k = 0; k < count; k++) {
    const progress = count > 1 ? k / (count - 1) : 0;
    const spread = (): number => Math.exp(faults.partSpread * random.boundedGaussian());
    const pace =
      person.cycleS * (1 + faults.tempoDrift * progress) * Math.exp(faults.tempoSpread * random.boundedGaussian());
    let [upS, holdS, downS] = [pace * shares[0] * spread(), pace * shares[1] * spread(), pace * shares[2] * spread()];
    const quickest = Math.max(1, shortestS / (upS + holdS + downS));
    [upS, holdS, downS] = [upS * quickest, holdS * quickest, downS * quickest];
    let lowS = pace * shares[3] * spread();
    const partial = random.chance(faults.partialShare) ? random.between(0.45, 0.65) : 1;
    const fresh = (1 - faults.fatigueLoss * progress) * Math.exp(faults.heightSpread * random.boundedGaussian());
    const share = fresh * partial;
    const top = Math.max(
      pitchOfRepetition(person, share, Math.min(upS, downS)),
      bottom + 0.5 * person.topPitchRad * fresh,
      rest + lowestM / foot.heelLeverM,
    );
    const wholeReturn = k === count - 1 || !random.chance(faults.incompleteShare);
    const nextBottom = wholeReturn ? rest : rest + (top - rest) * random.between(0.1, 0.35);
    const startS = timeS;
    const highFromS = startS + upS;
    let highToS = highFromS + holdS;
    let topS = (highFromS + highToS) / 2;
    go(startS, highFromS, bottom, top, person.upShape);
    if (random.chance(faults.dipShare)) {
      const sinkS = random.between(0.15, 0.35) * Math.max(1, person.cycleS / 2);
      const second = rest + (top - rest) * random.between(0.82, 0.95);
      const valley = rest + (second - rest) * (1 - random.between(0.1, 0.4));
      go(highToS, highToS + sinkS, top, valley, person.downShape);
      go(highToS + sinkS, highToS + 2 * sinkS, valley, second, person.upShape);
      highToS += 2 * sinkS;
      go(highToS, highToS + downS, second, nextBottom, person.downShape);
    } else {
      topS = (highFromS + highToS) / 2;
      go(highToS, highToS + downS, top, nextBottom, person.downShape);
    }
    const endS = highToS + downS;
    repetitions.push({
      startS,
      topS,
      endS,
      heelHeightM: heelHeight(foot, top),
      bodyRiseM: bodyRise(foot, top),
      highFromS,
      highToS,
      lowBeforeM: heelHeight(foot, bottom),
      lowAfterM: heelHeight(foot, nextBottom),
      kneeAssist: random.chance(faults.kneeAssistShare),
      handPush: random.chance(faults.handPushShare) ? random.between(0.02, 0.06) : 0,
      heelImpact: wholeReturn && random.chance(faults.heelImpactShare),
    });
    bottom = nextBottom;
    const last = k === count - 1;
    if (!last && random.chance(faults.restShare)) lowS = random.between(0.6, 2.5);
    if (!last && random.chance(faults.pauseShare)) {
      lowS = random.between(2.5, 8);
      if (random.chance(faults.pauseBounceShare)) bounces(endS, lowS, bottom);
    }
    timeS = endS + lowS;
  }
  return { moves, repetitions, endS: repetitions.length > 0 ? repetitions[repetitions.length - 1].endS : beginS };

  function bounces(fromS: number, lowS: number, level: number): void {
    let atS = fromS + random.between(0.3, 0.6);
    for (let left = random.integer(1, 3); left > 0 && atS + 0.8 < fromS + lowS - 0.3; left--) {
      const riseS = random.between(0.12, 0.35);
      const angle = random.between(0.004, 0.014) / foot.heelLeverM;
      go(atS, atS + riseS, level, level + angle, person.upShape);
      go(atS + riseS, atS + 2 * riseS, level + angle, level, person.downShape);
      atS += 2 * riseS + random.between(0, 0.6);
    }
  }
}
