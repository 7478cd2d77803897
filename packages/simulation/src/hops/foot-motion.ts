import { firstDerivative, secondDerivative } from '../derivatives.ts';
import { standardGravity } from '../gravity.ts';
import type { Random } from '../random.ts';
import type { HopBody } from './hop-body.ts';
import type { HopFaults } from './hop-table.ts';

/** What a perfect inertial sensor on the foot reads, in axes of the foot: forward, left, up. */
export interface FootMotion {
  readonly force: readonly [Float64Array, Float64Array, Float64Array];
  readonly turn: readonly [Float64Array, Float64Array, Float64Array];
}

/** Weights of a bell of the given width, odd in number, that add up to one. */
function bell(sdS: number, sampleRateHz: number): number[] {
  const half = Math.max(1, Math.ceil(3 * sdS * sampleRateHz));
  const weights = Array.from({ length: 2 * half + 1 }, (_, i) =>
    Math.exp(-(((i - half) / sampleRateHz / sdS) ** 2) / 2),
  );
  const sum = weights.reduce((total, one) => total + one, 0);
  return weights.map((one) => one / sum);
}

function spread(samples: Float64Array, weights: readonly number[]): Float64Array {
  const half = (weights.length - 1) / 2;
  const last = samples.length - 1;
  return samples.map((_, i) => {
    let sum = 0;
    for (let j = 0; j < weights.length; j++) sum += weights[j] * samples[Math.min(last, Math.max(0, i + j - half))];
    return sum;
  });
}

/**
 * What a sensor strapped to the foot goes through in a hop series: the forefoot stays where it lands, the heel comes down
 * and rises with the leg, in flight the foot runs on and comes back.
 *
 * @param body - the hopping body [m]
 * @param faults - softness of shoe and skin, wobble of the strap [s, m/s2]
 * @param random - stream to draw from [-]
 * @returns specific force and turn on the grid of the body [m/s2, rad/s]
 *
 * Source: ours
 */
export function footMotion(body: HopBody, faults: HopFaults, random: Random): FootMotion {
  const { extension, height, sampleRateHz } = body;
  const ankleM = random.between(0.11, 0.15);
  const sensorM = random.between(0.07, 0.19);
  const landing = random.between(0.3, 0.55);
  const deepestM = -extension.reduce((least, value) => Math.min(least, value), 0);
  const share = Math.min(0.75, ((landing - 0.03) * ankleM) / Math.max(0.02, deepestM));
  const pitch = extension.map((value) => Math.asin(Math.min(0.97, landing + (share * value) / ankleM)));
  const up = height.map((value, i) => value - extension[i] + sensorM * Math.sin(pitch[i]));
  const forward = pitch.map((value) => -sensorM * Math.cos(value));
  const weights = bell(faults.softS, sampleRateHz);
  const soft = (samples: Float64Array): Float64Array => spread(samples, weights);
  const [softUp, softForward, softPitch] = [soft(up), soft(forward), soft(pitch)];
  const aUp = secondDerivative(softUp, sampleRateHz);
  const aForward = secondDerivative(softForward, sampleRateHz);
  const turn = firstDerivative(softPitch, sampleRateHz);
  addWobble(aUp, aForward, body, faults.wobble, random);
  const forwardForce = new Float64Array(up.length);
  const upForce = new Float64Array(up.length);
  for (let i = 0; i < up.length; i++) {
    // the toes point down as the heel rises: the foot's own axes turn by the pitch
    const [cos, sin] = [Math.cos(softPitch[i]), Math.sin(softPitch[i])];
    const vertical = aUp[i] + standardGravity;
    forwardForce[i] = aForward[i] * cos - vertical * sin;
    upForce[i] = aForward[i] * sin + vertical * cos;
  }
  const nothing = new Float64Array(up.length);
  return { force: [forwardForce, nothing.slice(), upForce], turn: [nothing.slice(), turn, nothing.slice()] };
}

function addWobble(up: Float64Array, forward: Float64Array, body: HopBody, size: number, random: Random): void {
  const hertz = random.between(18, 35);
  const fadeS = random.between(0.02, 0.05);
  for (const { landsAgainS } of body.hops) {
    const from = Math.round(landsAgainS * body.sampleRateHz);
    for (let i = from; i < Math.min(up.length, from + 0.3 * body.sampleRateHz); i++) {
      const since = (i - from) / body.sampleRateHz;
      const wave = size * Math.exp(-since / fadeS) * Math.sin(2 * Math.PI * hertz * since);
      up[i] += wave;
      forward[i] += 0.5 * wave;
    }
  }
}
