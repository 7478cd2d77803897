import { secondDerivative } from './derivatives.ts';
import { drawFaults } from './fault-draw.ts';
import { type FaultAmounts, type FaultName, faultTable, type Level, type SimulatedPlacement } from './fault-table.ts';
import type { FootLever } from './foot-lever.ts';
import { lowPassNoiseDensity } from './noise.ts';
import { drawPerson, type Person } from './person.ts';
import { Random } from './random.ts';
import { planRepetitions, type TrueRepetition } from './repetition-plan.ts';
import { footInertial } from './sensors/foot-inertial.ts';
import { heelStringTrace } from './sensors/heel-string.ts';
import { inertialTrace } from './sensors/inertial.ts';
import { platformTrace } from './sensors/platform.ts';
import { trunkInertial } from './sensors/trunk-inertial.ts';
import { type NoiseDensity, signalToNoise } from './signal-to-noise.ts';
import { afterSet, beforeSet, Choreography } from './surroundings.ts';
import type { SimulatedTrace } from './trace.ts';
import { buildWorld, type World } from './world.ts';

/** What the person does: a set of heel raises, or something that holds no repetition. */
export type Activity = 'heel-raises' | 'quiet' | 'squats' | 'walking';

/** What to simulate. Everything that is left out is drawn from the seed. */
export interface SetRequest {
  readonly placement: SimulatedPlacement;
  readonly level: Level;
  /** same seed, same bytes */
  readonly seed: number;
  /** foot only: whether the sensor has a gyroscope; true when left out */
  readonly gyroscope?: boolean;
  /** heel raises when left out */
  readonly activity?: Activity;
  /** number of repetitions [-] */
  readonly count?: number;
  /** duration of one repetition with its usual stay at the bottom [s] */
  readonly cycleS?: number;
  /** lever from the metatarsal heads to the heel [m]; the whole foot grows with it, and its angles stay */
  readonly heelLeverM?: number;
  /** length of the string at rest, where one measures; drawn when left out [m] */
  readonly stringRestLengthM?: number;
  /** parts of the person to fix */
  readonly person?: Partial<Person>;
  /** amounts of faults to fix */
  readonly faults?: Partial<Record<FaultName, number>>;
}

/** A recording, what the tester knows about the person, and what is true. */
export interface SimulatedSet {
  readonly trace: SimulatedTrace;
  readonly subject: {
    readonly bodyMassKg: number;
    /** as a tester measured it [m] */
    readonly heelLeverM: number;
    /** rest length of the string where it matters [m] */
    readonly stringRestLengthM?: number;
  };
  readonly truth: {
    readonly repetitions: readonly TrueRepetition[];
    readonly person: Person;
    /** median over the repetitions; trunk and platform only [-] */
    readonly medianSignalToNoise?: number;
  };
  readonly faults: FaultAmounts;
}

const streams = { person: 1, faults: 2, plan: 3, events: 4, world: 5, sensor: 6, tester: 7 } as const;

function drawCount(random: Random): number {
  if (random.chance(0.1)) return random.integer(1, 7);
  return random.chance(0.1) ? random.integer(36, 60) : random.integer(8, 35);
}

/**
 * A simulated heel-raise set: trace, what the tester knows, truth and the amounts of its faults.
 *
 * @param request - placement, level, seed and what to fix [-]
 * @returns trace in SI units with its truth [SI]
 *
 * Source: ours
 */
export function simulateSet(request: SetRequest): SimulatedSet {
  const stream = (name: keyof typeof streams): Random => new Random(request.seed, streams[name]);
  const amounts = drawFaults(faultTable, request.level, stream('faults'), request.faults ?? {});
  const tester = stream('tester');
  const drawn = drawPerson(stream('person'), amounts);
  const person: Person = {
    ...drawn,
    ...(request.cycleS === undefined ? {} : { cycleS: request.cycleS }),
    foot: { ...grownTo(drawn.foot, request.heelLeverM), pivotMigration: amounts.pivotMigration },
    ...request.person,
  };
  const faults = atPace(amounts, person.cycleS, request.faults ?? {});
  const planRandom = stream('plan');
  const wanted = drawCount(planRandom);
  const empty = tester.chance(faults.emptyChance) || (request.activity ?? 'heel-raises') !== 'heel-raises';
  const count = request.count ?? (empty ? 0 : wanted);
  const events = stream('events');
  const stage = new Choreography(events, 0);
  beforeSet(request.placement, faults, stage, events);
  const plan = planRepetitions(person, faults, count, stage.timeS + faults.quietBeforeS, planRandom);
  stage.timeS = plan.endS;
  if (count === 0) otherActivity(request.activity ?? 'quiet', stage, events);
  stage.timeS += faults.quietAfterS;
  afterSet(request.placement, faults, stage, events);
  const world = buildWorld(
    {
      person,
      faults,
      moves: plan.moves,
      repetitions: plan.repetitions,
      surroundings: stage.parts,
      lengthS: stage.timeS,
    },
    stream('world'),
  );
  const random = stream('sensor');
  const short = tester.chance(0.6); // a long string reads the height itself
  const drawnRestM = short ? tester.between(0.1, 0.5) : tester.between(1.2, 2);
  const stringRestLengthM = request.stringRestLengthM ?? drawnRestM;
  const isTold = short || request.stringRestLengthM !== undefined;
  const slipAtS = tester.chance(faults.slipChance) ? tester.between(0.2, 0.8) * plan.endS : undefined;
  const heelLeverM = person.foot.heelLeverM * (1 + faults.leverError * tester.boundedGaussian());
  const trace = sense(request, world, person, faults, slipAtS, stringRestLengthM, random);
  const noise = noiseDensity(request.placement, trace, world, person, faults);
  const repetitions = noise === undefined ? plan.repetitions : withSignalToNoise(plan.repetitions, world, noise);
  return {
    trace,
    subject: {
      bodyMassKg: person.bodyMassKg,
      heelLeverM,
      ...(request.placement === 'heel' && isTold ? { stringRestLengthM } : {}),
    },
    truth: {
      repetitions,
      person,
      ...(noise === undefined || repetitions.length === 0
        ? {}
        : { medianSignalToNoise: median(repetitions.map((repetition) => repetition.signalToNoise!)) }),
    },
    faults,
  };
}

/** A foot of the same shape with a lever of this length; the foot as it is where none is asked for [m]. */
function grownTo(foot: FootLever, heelLeverM = foot.heelLeverM): FootLever {
  return { ...foot, heelLeverM, ankleLeverM: foot.ankleLeverM * (heelLeverM / foot.heelLeverM) };
}

/** Tempo at which the table states the wobble [s]. */
const statedCycleS = 2;

/** Who moves quickly shakes more: the wobble of this person's tempo, unless it was fixed. */
function atPace(amounts: FaultAmounts, cycleS: number, fixed: Partial<Record<FaultName, number>>): FaultAmounts {
  const growth = (statedCycleS / cycleS) ** amounts.wobblePace;
  return {
    ...amounts,
    trunkWobble: fixed.trunkWobble ?? amounts.trunkWobble * growth,
    platformWobble: fixed.platformWobble ?? amounts.platformWobble * growth,
  };
}

function otherActivity(activity: Activity, stage: Choreography, random: Random): void {
  if (activity === 'squats') for (let left = random.integer(3, 15); left > 0; left--) stage.squat();
  else if (activity === 'walking') for (let left = random.integer(5, 20); left > 0; left--) stage.stride();
  else stage.wait(3, 12);
}

function sense(
  request: SetRequest,
  world: World,
  person: Person,
  faults: FaultAmounts,
  slipAtS: number | undefined,
  stringRestLengthM: number,
  random: Random,
): SimulatedTrace {
  const slip = slipAtS === undefined ? undefined : { atS: slipAtS, angleRad: faults.slipRad };
  switch (request.placement) {
    case 'heel':
      return heelStringTrace(world, person.foot, stringRestLengthM, faults, slipAtS, random);
    case 'foot': {
      const onHeel = random.chance(0.4);
      const share = onHeel ? random.between(0.95, 1.1) : random.between(0.25, 0.6);
      const place = { behindM: share * person.foot.heelLeverM, aboveM: random.between(0.03, 0.07) };
      const ideal = footInertial(world, place, request.gyroscope ?? true);
      return inertialTrace(ideal, world, faults, slip, [50, 200], random);
    }
    case 'trunk':
      return inertialTrace(trunkInertial(world, faults, random), world, faults, slip, [50, 200], random);
    case 'platform':
      return platformTrace(world, person.bodyMassKg, faults, random);
    default:
      return request.placement satisfies never;
  }
}

function noiseDensity(
  placement: SimulatedPlacement,
  trace: SimulatedTrace,
  world: World,
  person: Person,
  faults: FaultAmounts,
): NoiseDensity | undefined {
  const { timesS } = trace.groups[0];
  const bandHz = timesS.length / (2 * (timesS[timesS.length - 1] - timesS[0]));
  const wobbleOf = (density: number) => (frequencyHz: number) =>
    lowPassNoiseDensity(frequencyHz, world.sampleRateHz, density, faults.wobbleCornerHz);
  if (placement === 'trunk') {
    const wobble = wobbleOf(faults.trunkWobble);
    return (frequencyHz) => wobble(frequencyHz) + faults.accelerometerNoise ** 2;
  }
  if (placement === 'platform') {
    const wobble = wobbleOf(faults.platformWobble);
    const white = (faults.forceNoiseN / person.bodyMassKg) ** 2 / bandHz;
    return (frequencyHz) => wobble(frequencyHz) + white;
  }
  return undefined;
}

/** Every tenth point of the world: 50 a second carry a heel raise. */
const thinning = 10;

function withSignalToNoise(
  repetitions: readonly TrueRepetition[],
  world: World,
  noise: NoiseDensity,
): TrueRepetition[] {
  const acceleration = secondDerivative(world.bodyM, world.sampleRateHz);
  return repetitions.map((repetition) => {
    const from = Math.floor(repetition.startS * world.sampleRateHz);
    const to = Math.ceil(repetition.endS * world.sampleRateHz);
    const part = acceleration.subarray(from, to).filter((_, index) => index % thinning === 0);
    return { ...repetition, signalToNoise: signalToNoise(part, world.sampleRateHz / thinning, noise) };
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
