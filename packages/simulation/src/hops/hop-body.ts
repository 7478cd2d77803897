import { standardGravity } from '../gravity.ts';
import type { Random } from '../random.ts';
import type { HopFaults } from './hop-table.ts';
import { compression, halfToDepth, type SpringHalf, springHalf } from './spring-landing.ts';

/** What is true of one hop: the contact before its flight, and the flight. */
export interface TrueHop {
  /** touching down before this hop; null for the first, which starts from standing [s] */
  readonly landS: number | null;
  readonly takeOffS: number;
  /** the next touching down [s] */
  readonly landsAgainS: number;
  /** null where the hop starts from standing or from a stop on the ground [s] */
  readonly contactS: number | null;
  readonly flightS: number;
  /** greatest force over deepest compression, null as before [N/m] */
  readonly stiffnessNpm: number | null;
  readonly takeOffSpeedMps: number;
}

/** The hopping body on a fine grid. */
export interface HopBody {
  readonly hops: readonly TrueHop[];
  readonly massKg: number;
  readonly lengthS: number;
  /** last touching down, after which the person stands [s] */
  readonly endS: number;
  readonly sampleRateHz: number;
  /** vertical force under the foot, without any platform [N] */
  readonly force: Float64Array;
  /** height of the body above that at touching down [m] */
  readonly height: Float64Array;
  /** height of the body above the forefoot, on the same scale [m] */
  readonly extension: Float64Array;
}

/** Samples a second of the body before any sensor looks at it [Hz]. */
export const hopRateHz = 2000;

/** How the hops of one series are planned. */
export interface HopPlan {
  readonly count: number;
  readonly massKg: number;
  readonly stiffnessNpm: number;
  readonly flightS: number;
}

/** The first push: down into the knees, then up until the force is gone. */
const pushS = 0.35;

function pushForce(share: number, weightN: number): number {
  return share < 0.4
    ? weightN * (1 - 0.5 * Math.sin((Math.PI * share) / 0.4))
    : weightN * (1 - ((share - 0.4) / 0.6) ** 6 + 1.2 * Math.sin((Math.PI * (share - 0.4)) / 0.6));
}

/** Extension of the leg in flight: runs on with the speed of take-off, is held, and is back at the end. */
function extensionInFlight(sinceS: number, flightS: number, speedMps: number, followS: number): number {
  const share = sinceS / flightS;
  const back = share * share * (3 - 2 * share);
  return speedMps * followS * (1 - Math.exp(-sinceS / followS)) * (1 - back);
}

/**
 * A hopping body: a mass on a spring on the ground, in free flight above it.
 *
 * Each contact has two springs, one down and one up, so that the next take-off may be faster or slower; both reach the same
 * depth. The first hop starts from standing, the last landing ends in standing.
 *
 * @param plan - number of flights, mass, stiffness and usual flight [-, kg, N/m, s]
 * @param faults - amounts of spread, fatigue, stops and impact [unit of the row]
 * @param random - stream to draw from [-]
 * @returns the body on a fine grid with its truth [s, N, m]
 *
 * Source: spring-mass model: Blickhan (1989), J Biomech 22:1217-1227; the rest is ours
 */
export function hopBody(plan: HopPlan, faults: HopFaults, random: Random): HopBody {
  const { massKg, count } = plan;
  const weightN = massKg * standardGravity;
  const usualMps = (plan.flightS * standardGravity) / 2;
  const speedOf = (k: number): number =>
    usualMps * (1 - (faults.speedLoss * k) / count) * (1 + faults.speedSpread * random.boundedGaussian());
  const stops = new Set<number>();
  for (let left = Math.round(faults.pauseCount); left > 0 && count > 8; left--) stops.add(random.integer(3, count - 3));
  const standS = random.between(1.5, 3);
  const parts: { force: number[]; height: number[]; extension: number[] } = { force: [], height: [], extension: [] };
  const add = (untilS: number, at: (timeS: number) => readonly [number, number, number]): void => {
    for (let i = parts.force.length; i < Math.round(untilS * hopRateHz); i++) {
      const [force, height, extension] = at(i / hopRateHz);
      parts.force.push(force);
      parts.height.push(height);
      parts.extension.push(extension);
    }
  };
  const followS = random.between(0.02, 0.04);
  const hops: TrueHop[] = [];
  let timeS = standS;
  add(timeS, () => [weightN, 0, 0]);
  const push = (fromS: number): void => add(fromS + pushS, (t) => [pushForce((t - fromS) / pushS, weightN), 0, 0]);
  push(timeS);
  timeS += pushS;
  let speed = speedOf(0);
  let before: { landS: number; contactS: number | null; stiffnessNpm: number | null } | undefined;
  for (let k = 0; k < count; k++) {
    const takeOffS = timeS;
    const flightS = (2 * speed) / standardGravity;
    const up = speed;
    add(takeOffS + flightS, (t) => {
      const since = t - takeOffS;
      return [0, up * since - (standardGravity * since * since) / 2, extensionInFlight(since, flightS, up, followS)];
    });
    hops.push({
      landS: before?.landS ?? null,
      takeOffS,
      landsAgainS: takeOffS + flightS,
      contactS: before?.contactS ?? null,
      flightS,
      stiffnessNpm: before?.stiffnessNpm ?? null,
      takeOffSpeedMps: up,
    });
    timeS = takeOffS + flightS;
    const landS = timeS;
    const stiffness = plan.stiffnessNpm * (1 + faults.stiffnessSpread * random.boundedGaussian());
    const down = springHalf(massKg, stiffness, up);
    const impactS = random.between(0.008, 0.02);
    const impactN = (Math.PI * faults.impactShare * massKg * up) / (2 * impactS);
    const blow = (since: number): number => (since < impactS ? impactN * Math.sin((Math.PI * since) / impactS) : 0);
    const downAt = (t: number): readonly [number, number, number] => {
      const since = t - landS;
      const x = compression(down, massKg, since);
      return [stiffness * x + blow(since), -x, -x];
    };
    if (k === count - 1 || stops.has(k)) {
      // the landing is taken up and ends in standing
      const settleS = k === count - 1 ? random.between(1.5, 3) : random.between(0.8, 1.6);
      const bottomS = landS + down.durationS;
      add(bottomS, downAt);
      // without a step in force: a critically damped return from the deepest point to the level of standing
      const startMps2 = (stiffness * down.depthM) / massKg - standardGravity;
      const slowS = Math.sqrt(down.depthM / startMps2);
      add(bottomS + settleS, (t) => {
        const s = (t - bottomS) / slowS;
        const height = -down.depthM * (1 + s) * Math.exp(-s);
        return [weightN + massKg * startMps2 * (1 - s) * Math.exp(-s), height, height];
      });
      timeS = bottomS + settleS;
      if (k === count - 1) break;
      push(timeS);
      timeS += pushS;
      speed = speedOf(k + 1);
      before = { landS, contactS: null, stiffnessNpm: null };
      continue;
    }
    speed = speedOf(k + 1);
    const rise: SpringHalf = halfToDepth(massKg, down.depthM, speed);
    const contactS = down.durationS + rise.durationS;
    add(landS + contactS, (t) => {
      const since = t - landS;
      if (since <= down.durationS) return downAt(t);
      const x = compression(rise, massKg, Math.max(0, contactS - since));
      return [rise.stiffnessNpm * x + blow(since), -x, -x];
    });
    timeS = landS + contactS;
    before = { landS, contactS, stiffnessNpm: (stiffness + rise.stiffnessNpm) / 2 };
  }
  const samples = (values: readonly number[]): Float64Array => Float64Array.from(values);
  return {
    hops,
    massKg,
    lengthS: timeS,
    endS: hops.at(-1)?.landsAgainS ?? timeS,
    sampleRateHz: hopRateHz,
    force: samples(parts.force),
    height: samples(parts.height),
    extension: samples(parts.extension),
  };
}
