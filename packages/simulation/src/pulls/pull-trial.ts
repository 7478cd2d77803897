import { Random } from '../random.ts';
import type { SimulatedTrace } from '../trace.ts';
import { simulatePulls } from './simulate-pulls.ts';

/** One trial of a simulated person who follows the cues. */
export interface PullTrialRequest {
  /** the person and the day: same seed, same person, same bytes */
  readonly seed: number;
  readonly side: 'left' | 'right';
  /** a plate also reads the resting leg, a cell in line does not */
  readonly placement: 'platform' | 'inline';
  /** which trial of this leg, from 0 [-] */
  readonly trial: number;
  /** drawn when left out [kg] */
  readonly bodyMassKg?: number;
}

const gravityMps2 = 9.80665;

/** Trials that one person has in store; later ones begin again with the first. */
const trialsInStore = 8;

/** Time recorded before the onset, of which the last part is the delay after the cue to push, and after the release [s]. */
const beforeS = 2.4;
const afterS = 2.6;

/** From the onset to letting go: a ramp of 2.5 s and a hold of 3 s after the cue, begun 0.4 s and ended 0.3 s behind it [s]. */
const rampAndHoldS = 5.4;

/** Share of trials with a dip before the push, so that a demonstration shows what is not accepted [-], and its depth [N]. */
const dipShare = 0.15;
const dipN = 45;

/** How strong the two legs of a person are, and what the resting leg weighs on a plate [N]. */
function personOf({ seed, bodyMassKg }: PullTrialRequest): { left: number; right: number; restLoadN: number } {
  const random = new Random(seed, 15);
  const drawnKg = random.between(55, 95);
  const weightN = (bodyMassKg ?? drawnKg) * gravityMps2;
  const strongestN = weightN * random.between(1.1, 1.7);
  const weaker = random.between(0.8, 1);
  const isLeftWeaker = random.chance(0.5);
  return {
    left: strongestN * (isLeftWeaker ? weaker : 1),
    right: strongestN * (isLeftWeaker ? 1 : weaker),
    restLoadN: weightN * random.between(0.1, 0.12),
  };
}

/**
 * One trial of a simulated person: two seconds relaxed, a ramp to the maximum, a hold, and off.
 *
 * @param request - person, side, rig and number of the trial [-]
 * @returns trace with one channel of force, its times from 0 [N, s]
 *
 * Source: ours; the resting leg as 10 to 12 % of body weight is computed from segment masses
 */
export function simulatePullTrial(request: PullTrialRequest): SimulatedTrace {
  const { seed, side, placement, trial } = request;
  const person = personOf(request);
  const { trace, truth } = simulatePulls({
    kind: 'ramp',
    level: 'typical',
    seed: 2 * seed + (side === 'left' ? 0 : 1),
    count: trialsInStore,
    sampleRateHz: 200,
    strongestN: person[side],
    rampAndHoldS,
    faults: { restLoadN: placement === 'platform' ? person.restLoadN : 0, dipShare, dipN },
  });
  const effort = truth.efforts[trial % trialsInStore];
  const { timesS, channels } = trace.groups[0];
  const from = timesS.findIndex((timeS) => timeS >= effort.onsetS - beforeS);
  const end = timesS.findIndex((timeS) => timeS > effort.endS + afterS);
  const to = end < 0 ? timesS.length : end;
  const first = Math.max(0, from);
  return {
    groups: [
      {
        timesS: timesS.slice(first, to).map((timeS) => timeS - timesS[first]),
        channels: channels.map((channel) => ({ ...channel, samples: channel.samples.slice(first, to) })),
      },
    ],
  };
}
