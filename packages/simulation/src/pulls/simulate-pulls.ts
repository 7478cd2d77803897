import { drawFaults } from '../fault-draw.ts';
import type { Level } from '../fault-table.ts';
import { lowPassNoise } from '../noise.ts';
import { Random } from '../random.ts';
import { addWhite, convert, drawSampleTimes, sampleAt } from '../sampling.ts';
import { thereAndBack } from '../smooth-move.ts';
import type { SimulatedTrace } from '../trace.ts';
import { drawEffort, type Effort, type EffortStreams, effortForce, releaseTime } from './effort.ts';
import { type PullFaultName, type PullFaults, pullTable } from './pull-table.ts';
import { type RiseFamily, risenAfter } from './rise-shape.ts';

/** What isometric efforts to simulate. Everything that is left out is drawn from the seed. */
export interface PullRequest {
  readonly kind: Effort['kind'];
  readonly level: Level;
  /** same seed, same bytes */
  readonly seed: number;
  /** number of efforts [-] */
  readonly count?: number;
  readonly sampleRateHz?: number;
  /** force that the person can reach; the plateaus are 85 to 100 % of it [N] */
  readonly strongestN?: number;
  /** time from the onset of a ramp to letting go, as somebody holds who waits for a cue; drawn when left out [s] */
  readonly rampAndHoldS?: number;
  /** form of every rise; left out, each effort draws its own */
  readonly riseFamily?: RiseFamily;
  /** amounts of faults to fix */
  readonly faults?: Partial<Record<PullFaultName, number>>;
}

/** What is true of one effort; forces count from the baseline, tremor included, errors of the sensor not. */
export interface TrueEffort extends Effort {
  /** greatest force and when [N, s] */
  readonly peakN: number;
  readonly peakS: number;
  /** greatest mean over half a second [N] */
  readonly bestHalfSecondN: number;
  /** force at 50, 100, 150 and 200 ms after the onset [N] */
  readonly risenN: readonly [number, number, number, number];
  /** area under the force over the first 200 ms [N s] */
  readonly earlyImpulseNs: number;
  /** times from the onset at which the force first reaches 30 and 50 % of the peak [s] */
  readonly reachedS: readonly [number, number];
  /** back at the baseline [s] */
  readonly endS: number;
}

/** A recording of isometric efforts with its truth. */
export interface SimulatedPulls {
  readonly trace: SimulatedTrace;
  readonly truth: { readonly efforts: readonly TrueEffort[]; readonly restLoadN: number };
  readonly faults: PullFaults;
}

/** Samples per second of the force before any sensor looks at it [Hz]. */
const fineRateHz = 2000;

/** Steps in which the force of the first 200 ms is summed. */
const earlySteps = 400;

const streams = { faults: 11, plan: 12, body: 13, sensor: 14, rise: 15 } as const;

function planEfforts(request: PullRequest, streams: EffortStreams): { efforts: Effort[]; lengthS: number } {
  const random = streams.course;
  const count = request.count ?? random.integer(3, 6);
  // drawn in any case: what follows must not depend on whether it is given
  const drawnN = random.between(500, 1600);
  const strongestN = request.strongestN ?? drawnN;
  let timeS = random.between(2, 4);
  const efforts: Effort[] = [];
  for (let k = 0; k < count; k++) {
    const drawn = drawEffort(request.kind, timeS, strongestN * random.between(0.85, 1), streams, request.riseFamily);
    const { rampAndHoldS } = request;
    const effort =
      rampAndHoldS === undefined ? drawn : { ...drawn, holdS: Math.max(0, rampAndHoldS - risenAfter(drawn.rise)) };
    efforts.push(effort);
    timeS = releaseTime(effort) + effort.releaseS + random.between(3, 8);
  }
  return { efforts, lengthS: timeS };
}

/** Force on the sensor above the resting load: efforts with their unsteadiness. */
function bodyForce(efforts: readonly Effort[], lengthS: number, faults: PullFaults, random: Random): Float64Array {
  const count = Math.ceil(lengthS * fineRateHz);
  const force = new Float64Array(count);
  const slow = lowPassNoise(count, fineRateHz, 1, 1.5, random);
  const tremorHz = random.between(8, 12);
  const size = lowPassNoise(count, fineRateHz, 1, 0.7, random);
  const slowRms = rootMeanSquare(slow);
  const sizeRms = rootMeanSquare(size);
  for (const effort of efforts) {
    const from = Math.floor(effort.onsetS * fineRateHz);
    const to = Math.min(count, Math.ceil((releaseTime(effort) + effort.releaseS) * fineRateHz));
    for (let i = from; i < to; i++) {
      const timeS = i / fineRateHz;
      const wave = Math.SQRT2 * Math.sin(2 * Math.PI * tremorHz * timeS) * (1 + (0.4 * size[i]) / sizeRms);
      const steadiness = 1 + (faults.unsteadiness * slow[i]) / slowRms + faults.tremor * wave;
      force[i] += effortForce(effort, faults.yielding, timeS) * steadiness;
    }
  }
  return force;
}

function truthOf(effort: Effort, force: Float64Array): TrueEffort {
  const endS = releaseTime(effort) + effort.releaseS;
  const from = Math.floor(effort.onsetS * fineRateHz);
  const to = Math.min(force.length, Math.ceil(endS * fineRateHz));
  const half = fineRateHz / 2;
  let [peak, sum, best] = [from, 0, 0];
  for (let i = from; i < to; i++) {
    if (force[i] > force[peak]) peak = i;
    sum += force[i] - (i - half >= from ? force[i - half] : 0);
    best = Math.max(best, sum / half);
  }
  const atAll = (afterS: Float64Array): Float64Array =>
    sampleAt(
      force,
      { sampleRateHz: fineRateHz },
      afterS.map((one) => effort.onsetS + one),
    );
  const at = (afterS: number): number => atAll(Float64Array.of(afterS))[0];
  // samples of the force lie beside the onset, which is where it is zero
  const reached = (share: number): number => {
    let i = from + 1;
    while (force[i] < share * force[peak]) i++;
    const before = Math.max(0, force[i - 1]);
    return (i - 1 + (share * force[peak] - before) / (force[i] - before)) / fineRateHz - effort.onsetS;
  };
  const early = atAll(Float64Array.from({ length: earlySteps }, (_, k) => ((k + 0.5) / earlySteps) * 0.2));
  return {
    ...effort,
    peakN: force[peak],
    peakS: peak / fineRateHz,
    bestHalfSecondN: best,
    risenN: [at(0.05), at(0.1), at(0.15), at(0.2)],
    earlyImpulseNs: (early.reduce((sum, value) => sum + value, 0) * 0.2) / earlySteps,
    reachedS: [reached(0.3), reached(0.5)],
    endS,
  };
}

function addHump(force: Float64Array, fromS: number, toS: number, size: number): void {
  const to = Math.min(force.length, Math.ceil(toS * fineRateHz));
  for (let i = Math.max(0, Math.floor(fromS * fineRateHz)); i < to; i++) {
    force[i] += size * thereAndBack((i / fineRateHz - fromS) / (toS - fromS));
  }
}

/** Tension that creeps in and countermovements, both over at the onset. */
function addPreparation(force: Float64Array, efforts: readonly Effort[], faults: PullFaults, random: Random): void {
  for (const { onsetS } of efforts) {
    const creeping = random.chance(faults.pretensionShare);
    const dips = random.chance(faults.dipShare);
    const creepS = random.between(0.6, 1.5);
    const dipS = random.between(0.12, 0.3);
    if (creeping) addHump(force, onsetS - creepS, onsetS, faults.pretensionN);
    if (dips) addHump(force, onsetS - dipS, onsetS, -faults.dipN);
  }
}

function addKnocks(force: Float64Array, faults: PullFaults, random: Random): void {
  const lengthS = force.length / fineRateHz;
  for (let left = Math.round((faults.knocksPerMinute * lengthS) / 60); left > 0; left--) {
    const atS = random.between(0, lengthS);
    addHump(force, atS, atS + random.between(0.006, 0.03), faults.knockN * (random.chance(0.7) ? 1 : -1));
  }
}

function rootMeanSquare(samples: Float64Array): number {
  return Math.sqrt(samples.reduce((sum, value) => sum + value * value, 0) / samples.length);
}

/**
 * A simulated recording of isometric efforts: strength ramps or efforts as fast as possible, with its truth.
 *
 * @param request - kind, level, seed and what to fix [-]
 * @returns trace with one channel of force and its truth [N, s]
 *
 * Source: ours
 */
export function simulatePulls(request: PullRequest): SimulatedPulls {
  const stream = (name: keyof typeof streams): Random => new Random(request.seed, streams[name]);
  const faults = drawFaults(pullTable, request.level, stream('faults'), request.faults ?? {});
  const { efforts, lengthS } = planEfforts(request, { course: stream('plan'), rise: stream('rise') });
  const body = stream('body');
  const force = bodyForce(efforts, lengthS, faults, body);
  const truth = efforts.map((effort) => truthOf(effort, force));
  addPreparation(force, efforts, faults, body);
  const random = stream('sensor');
  addKnocks(force, faults, random);
  const rateHz =
    request.sampleRateHz ??
    random.weighted([
      [80, 1],
      [200, 1],
      [500, 1],
      [1000, 3],
    ]);
  const times = drawSampleTimes(lengthS, rateHz, faults, random);
  const samples = sampleAt(force, { sampleRateHz: fineRateHz }, times.trueS);
  for (let i = 0; i < samples.length; i++) {
    samples[i] += faults.restLoadN + faults.offsetN + (faults.driftN * times.trueS[i]) / 60;
  }
  addWhite(samples, faults.noiseN, random);
  convert(samples, -faults.rangeN, faults.rangeN, faults.resolutionBits);
  return {
    trace: { groups: [{ timesS: times.stampS, channels: [{ quantity: 'force', axis: null, samples }] }] },
    truth: { efforts: truth, restLoadN: faults.restLoadN },
    faults,
  };
}
