import { drawFaults } from '../fault-draw.ts';
import type { Level } from '../fault-table.ts';
import { lowPassNoise } from '../noise.ts';
import { Random } from '../random.ts';
import { drawRotation, rotate } from '../rotation.ts';
import { addWhite, convert, drawSampleTimes, sampleAt } from '../sampling.ts';
import { type SimulatedTrace, vectorChannels } from '../trace.ts';
import { footMotion } from './foot-motion.ts';
import { type HopBody, hopBody, type TrueHop } from './hop-body.ts';
import { type HopFaultName, type HopFaults, hopTable } from './hop-table.ts';

/** What hop series to simulate. Everything that is left out is drawn from the seed. */
export interface HopRequest {
  readonly placement: 'platform' | 'foot';
  readonly level: Level;
  /** same seed, same bytes */
  readonly seed: number;
  /** number of flights [-] */
  readonly count?: number;
  readonly sampleRateHz?: number;
  /** false: an accelerometer alone on the foot */
  readonly gyroscope?: boolean;
  readonly massKg?: number;
  readonly stiffnessNpm?: number;
  /** usual time in the air [s] */
  readonly flightS?: number;
  /** amounts of faults to fix */
  readonly faults?: Partial<Record<HopFaultName, number>>;
}

/** A recording of a hop series with its truth. */
export interface SimulatedHops {
  readonly trace: SimulatedTrace;
  readonly truth: { readonly hops: readonly TrueHop[]; readonly massKg: number };
  readonly faults: HopFaults;
}

const streams = { faults: 21, plan: 22, body: 23, sensor: 24 } as const;

/** Range of the accelerometer, each way: 16 g [m/s2]; of the gyroscope: 2000 degrees a second [rad/s]. */
const accelerometerRange = 16 * 9.80665;
const gyroscopeRange = (2000 * Math.PI) / 180;

/** Ringing of the platform: each step of the force sets off a wave that dies away. */
function addRinging(force: Float64Array, body: HopBody, share: number, random: Random): void {
  const hertz = random.between(60, 180);
  const fadeS = random.between(0.004, 0.012);
  const lengthS = 6 * fadeS;
  const strike = (atS: number, size: number): void => {
    const from = Math.round(atS * body.sampleRateHz);
    for (let i = from; i < Math.min(force.length, from + lengthS * body.sampleRateHz); i++) {
      const since = (i - from) / body.sampleRateHz;
      force[i] += size * Math.exp(-since / fadeS) * Math.sin(2 * Math.PI * hertz * since);
    }
  };
  const weightN = body.massKg * 9.80665;
  for (const hop of body.hops) {
    strike(hop.takeOffS, -share * 0.2 * weightN);
    strike(hop.landsAgainS, share * weightN);
  }
}

function platformTrace(body: HopBody, request: HopRequest, faults: HopFaults, random: Random): SimulatedTrace {
  const force = body.force.slice();
  const unsteady = lowPassNoise(force.length, body.sampleRateHz, 1, 1.5, random);
  const size = Math.sqrt(unsteady.reduce((sum, value) => sum + value * value, 0) / unsteady.length) || 1;
  for (let i = 0; i < force.length; i++) force[i] *= 1 + (faults.swayShare * unsteady[i]) / size;
  addRinging(force, body, faults.ringShare, random);
  const rateHz =
    request.sampleRateHz ??
    random.weighted([
      [500, 1],
      [1000, 3],
      [2000, 1],
    ]);
  const times = drawSampleTimes(body.lengthS, rateHz, faults, random);
  const samples = sampleAt(force, body, times.trueS);
  for (let i = 0; i < samples.length; i++) samples[i] += faults.offsetN + (faults.driftN * times.trueS[i]) / 60;
  addWhite(samples, faults.noiseN, random);
  convert(samples, -1000, faults.rangeN, faults.resolutionBits);
  return { groups: [{ timesS: times.stampS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}

function footTrace(body: HopBody, request: HopRequest, faults: HopFaults, random: Random): SimulatedTrace {
  const motion = footMotion(body, faults, random);
  const mounting = drawRotation(random);
  const rateHz =
    request.sampleRateHz ??
    random.weighted([
      [200, 2],
      [400, 1],
      [1000, 1],
    ]);
  const times = drawSampleTimes(body.lengthS, rateHz, faults, random);
  const whiteSd = Math.sqrt(times.sampleRateHz / 2);
  const seen = (vector: FootVector, range: number, offset: number, density: number): Float64Array[] => {
    const turned = vector.map((signal) => sampleAt(signal, body, times.trueS));
    for (let i = 0; i < times.trueS.length; i++) {
      const [x, y, z] = rotate(mounting, turned[0][i], turned[1][i], turned[2][i]);
      [turned[0][i], turned[1][i], turned[2][i]] = [x, y, z];
    }
    for (const samples of turned) {
      const shift = offset * random.boundedGaussian();
      for (let i = 0; i < samples.length; i++) samples[i] += shift;
      addWhite(samples, density * whiteSd, random);
      convert(samples, -range, range, faults.resolutionBits);
    }
    return turned;
  };
  const channels = vectorChannels(
    'acceleration',
    seen(motion.force, accelerometerRange, faults.accelerometerOffset, faults.accelerometerNoise),
  );
  if (request.gyroscope !== false) {
    channels.push(
      ...vectorChannels('angular-velocity', seen(motion.turn, gyroscopeRange, 0.01, faults.gyroscopeNoise)),
    );
  }
  return { groups: [{ timesS: times.stampS, channels }] };
}

type FootVector = ReturnType<typeof footMotion>['force'];

/**
 * A simulated recording of repeated hops on one leg, with its truth.
 *
 * @param request - placement, level, seed and what to fix [-]
 * @returns trace of the platform or of the sensor on the foot, and the true hops [N or m/s2 and rad/s, s]
 *
 * Source: ours
 */
export function simulateHops(request: HopRequest): SimulatedHops {
  const stream = (name: keyof typeof streams): Random => new Random(request.seed, streams[name]);
  const faults = drawFaults(hopTable, request.level, stream('faults'), request.faults ?? {});
  const plan = stream('plan');
  const drawn = {
    count: plan.integer(20, 25),
    massKg: plan.between(50, 100),
    // per kilogram, so that heavy people are stiffer: contacts of about 0.2 to 0.35 s
    perKg: plan.between(130, 330),
    flightS: plan.between(0.14, 0.32),
  };
  const massKg = request.massKg ?? drawn.massKg;
  const body = hopBody(
    {
      count: request.count ?? drawn.count,
      massKg,
      stiffnessNpm: request.stiffnessNpm ?? drawn.perKg * massKg,
      flightS: request.flightS ?? drawn.flightS,
    },
    faults,
    stream('body'),
  );
  const trace = (request.placement === 'platform' ? platformTrace : footTrace)(body, request, faults, stream('sensor'));
  return { trace, truth: { hops: body.hops, massKg }, faults };
}
