import type { FaultAmounts, SimulatedPlacement } from './fault-table.ts';
import type { Random } from './random.ts';
import type { Move, MoveShape } from './smooth-move.ts';

/** There and back: from 0 to `size` and again to 0. */
export interface Hump {
  readonly fromS: number;
  readonly toS: number;
  readonly size: number;
}

/** A string drawn by a hand: leaves rest at speed, `power` at most 1. */
export interface Pull extends Hump {
  readonly power: number;
}

/** What happens besides the repetitions: steps, hands on the string, somebody getting on and off. */
export interface Surroundings {
  /** pitch of the foot while it is carried through the air [rad] */
  readonly pitch: Move[];
  /** way forward of the metatarsal heads [m] */
  readonly forward: Move[];
  /** lift of the metatarsal heads [m] */
  readonly lifts: Hump[];
  /** way of the string [m] */
  readonly pulls: Pull[];
  /** load on the platform [-] */
  readonly load: Move[];
  /** short changes of the load [-] */
  readonly loadShifts: Hump[];
  /** speed taken away by a footfall [m/s] */
  readonly hits: { readonly atS: number; readonly speed: number }[];
  /** steps of the body: rate and half height of its bobbing [Hz, m] */
  readonly gait: { readonly fromS: number; readonly toS: number; readonly stepHz: number; readonly sizeM: number }[];
  /** movement of the body down and up again [m] */
  readonly squats: Hump[];
}

/**
 * Surroundings in which nothing happens.
 *
 * @returns empty lists [-]
 *
 * Source: ours
 */
export function emptySurroundings(): Surroundings {
  return { pitch: [], forward: [], lifts: [], pulls: [], load: [], loadShifts: [], hits: [], gait: [], squats: [] };
}

const smooth: MoveShape = { kind: 'minimum-jerk', skew: 0, share: 0 };

/** Writes one thing after another and remembers where it stands in time and place. */
export class Choreography {
  readonly parts: Surroundings = emptySurroundings();
  private readonly random: Random;
  private forwardM = 0;
  timeS: number;

  constructor(random: Random, fromS: number) {
    this.random = random;
    this.timeS = fromS;
  }

  wait(low: number, high: number): void {
    this.timeS += this.random.between(low, high);
  }

  /** A walking stride of this foot: push-off, swing with the toes up, heel strike, flat. */
  stride(): void {
    const { random, parts } = this;
    const from = this.timeS;
    const strideS = random.between(1, 1.5);
    const push = random.between(0.7, 1.2);
    const toes = -random.between(0.2, 0.45);
    const [off, strike, flat] = [from + 0.28 * strideS, from + 0.62 * strideS, from + 0.71 * strideS];
    parts.pitch.push({ fromS: from, toS: off, from: 0, to: push, shape: smooth });
    parts.pitch.push({ fromS: off, toS: strike, from: push, to: toes, shape: smooth });
    parts.pitch.push({ fromS: strike, toS: flat, from: toes, to: 0, shape: smooth });
    const wayM = random.between(0.8, 1.4);
    parts.forward.push({
      fromS: off - 0.05,
      toS: strike,
      from: this.forwardM,
      to: this.forwardM + wayM,
      shape: smooth,
    });
    this.forwardM += wayM;
    parts.lifts.push({ fromS: off - 0.05, toS: strike, size: random.between(0.03, 0.09) });
    parts.hits.push({ atS: strike, speed: random.between(0.05, 0.25) });
    parts.gait.push({ fromS: from, toS: from + strideS, stepHz: 2 / strideS, sizeM: random.between(0.012, 0.025) });
    this.timeS = from + strideS * random.between(0.95, 1.1);
  }

  /** The foot is lifted and put down again nearby. */
  footfall(awayM: number): void {
    const { random, parts } = this;
    const from = this.timeS;
    const airS = random.between(0.45, 1);
    const up = random.between(0.15, 0.6);
    const toes = random.chance(0.5) ? -random.between(0.03, 0.2) : 0;
    const [top, land] = [from + 0.45 * airS, from + 0.9 * airS];
    parts.pitch.push({ fromS: from, toS: top, from: 0, to: up, shape: smooth });
    parts.pitch.push({ fromS: top, toS: land, from: up, to: toes, shape: smooth });
    if (toes < 0) parts.pitch.push({ fromS: land, toS: from + airS, from: toes, to: 0, shape: smooth });
    const wayM = random.between(-awayM, awayM);
    if (awayM > 0) {
      parts.forward.push({
        fromS: from + 0.2 * airS,
        toS: land,
        from: this.forwardM,
        to: this.forwardM + wayM,
        shape: smooth,
      });
      this.forwardM += wayM;
    }
    parts.lifts.push({ fromS: from + 0.15 * airS, toS: land, size: random.between(0.02, 0.1) });
    parts.hits.push({ atS: land, speed: random.between(0.03, 0.15) });
    parts.loadShifts.push({ fromS: from, toS: from + airS, size: -random.between(0.2, 0.7) });
    parts.gait.push({ fromS: from, toS: from + airS, stepHz: 1 / airS, sizeM: random.between(0.005, 0.02) });
    this.timeS = from + airS;
  }

  /** A hand draws the string and lets it back. */
  pull(): void {
    const { random, parts } = this;
    const lastsS = random.between(0.4, 1.6);
    parts.pulls.push({
      fromS: this.timeS,
      toS: this.timeS + lastsS,
      size: random.between(0.04, 0.3),
      power: random.between(0.5, 1),
    });
    this.timeS += lastsS;
  }

  /** Somebody steps onto the empty platform: first with part of the weight, then with all, a little too much at first. */
  stepOn(): void {
    const { random, parts } = this;
    this.wait(0.8, 3);
    const firstS = random.between(0.25, 0.6);
    const part = random.between(0.4, 0.6);
    parts.load.push({ fromS: this.timeS, toS: this.timeS + firstS, from: 0, to: part, shape: smooth });
    this.timeS += firstS;
    if (random.chance(0.6)) this.wait(0.1, 1.5);
    const secondS = random.between(0.3, 0.7);
    parts.load.push({ fromS: this.timeS, toS: this.timeS + secondS, from: part, to: 1, shape: smooth });
    this.timeS += secondS;
    parts.loadShifts.push({ fromS: this.timeS - 0.1, toS: this.timeS + 0.4, size: random.between(0.03, 0.15) });
    this.timeS += 0.4;
  }

  /** Somebody steps off the platform and leaves it empty. */
  stepOff(): void {
    const { random, parts } = this;
    parts.loadShifts.push({ fromS: this.timeS, toS: this.timeS + 0.4, size: random.between(-0.12, 0.12) });
    this.timeS += 0.3;
    const offS = random.between(0.3, 0.8);
    parts.load.push({ fromS: this.timeS, toS: this.timeS + offS, from: 1, to: 0, shape: smooth });
    this.timeS += offS;
    this.wait(0.5, 2);
  }

  /** Knees and hips bend and straighten while the feet stay down. */
  squat(): void {
    const { random, parts } = this;
    const lastsS = random.between(1.5, 3);
    parts.squats.push({ fromS: this.timeS, toS: this.timeS + lastsS, size: -random.between(0.15, 0.4) });
    this.timeS += lastsS * random.between(1, 1.3);
  }
}

/**
 * Writes what comes before the quiet stance: strides, footfalls, hands on the string, stepping onto the platform.
 *
 * @param placement - where the sensor sits [-]
 * @param faults - chances of each [-]
 * @param stage - where it is written [-]
 * @param random - stream to draw from [-]
 *
 * Source: ours
 */
export function beforeSet(
  placement: SimulatedPlacement,
  faults: FaultAmounts,
  stage: Choreography,
  random: Random,
): void {
  if (placement === 'platform' && random.chance(faults.stepOnChance)) stage.stepOn();
  if (random.chance(faults.stridesChance)) {
    stage.wait(0.2, 1.5);
    const walks = (placement === 'foot' || placement === 'trunk') && random.chance(0.6);
    for (let left = random.integer(1, walks ? 6 : 3); left > 0; left--) {
      if (walks) stage.stride();
      else stage.footfall(placement === 'foot' ? 0.15 : 0);
      if (!walks) stage.wait(0.1, 1);
    }
  }
  if (placement === 'heel' && random.chance(faults.hookingChance)) {
    stage.wait(0.2, 1.5);
    for (let left = random.integer(1, 2); left > 0; left--) {
      stage.pull();
      stage.wait(0.2, 1);
    }
  }
}

/**
 * Writes what comes after the quiet stance that follows the set: unhooking, stepping off, walking away.
 *
 * @param placement - where the sensor sits [-]
 * @param faults - chances of each [-]
 * @param stage - where it is written [-]
 * @param random - stream to draw from [-]
 *
 * Source: ours
 */
export function afterSet(
  placement: SimulatedPlacement,
  faults: FaultAmounts,
  stage: Choreography,
  random: Random,
): void {
  if (placement === 'heel' && random.chance(faults.hookingChance)) {
    stage.pull();
    stage.wait(0.3, 1.5);
  } else if (placement === 'platform') {
    if (random.chance(faults.stepOffChance)) stage.stepOff();
  } else if (random.chance(faults.walkOffChance)) {
    for (let left = random.integer(1, 3); left > 0; left--) {
      if (placement === 'heel') stage.footfall(0);
      else stage.stride();
    }
    stage.wait(0.3, 1);
  }
}
