import { type AssessmentRequest, assess, defaultSettings, type Placement, type Report } from '@surae/analysis';
import { PROTOCOLS } from '@surae/shared';
import { openNumbers, openRecording, openTable } from './open-recordings.ts';

function assessOpen(name: string, placement: Placement, subject: AssessmentRequest['subject'] = {}): Report {
  return assess(openRecording(name), { placement, protocol: PROTOCOLS[0], subject }, defaultSettings());
}

/** A recording that holds no heel raise, and how it is assessed. */
export interface NoRaises {
  readonly name: string;
  readonly placement: Placement;
  readonly heelLeverM?: number;
}

const foot = (name: string): NoRaises => ({ name, placement: 'foot', heelLeverM: 0.195 });
const platform = (name: string): NoRaises => ({ name, placement: 'platform' });
const trunk = (name: string): NoRaises => ({ name, placement: 'trunk' });

/** Recordings of other movements, by what the person does in them. */
export const NO_RAISES: Readonly<Record<string, readonly NoRaises[]>> = {
  'walking and stairs, sensor on the foot': [
    foot('walking-foot/left-imu.csv'),
    foot('walking-foot/right-imu.csv'),
    foot('walking-foot/stairs-up-left-imu.csv'),
  ],
  'walking, height of the heel': [
    { name: 'walking-foot/left-markers.csv', placement: 'heel', heelLeverM: 0.195 },
    { name: 'walking-foot/right-markers.csv', placement: 'heel', heelLeverM: 0.195 },
  ],
  'walking, sensor at the lower back': [
    trunk('walking-lower-back/HA001_Test5_Trial1.csv'),
    trunk('walking-lower-back/HA001_Test5_Trial2.csv'),
    trunk('walking-lower-back/MS001_Test5_Trial1.csv'),
    trunk('walking-lower-back/HA001_Test11_Trial1.csv'),
  ],
  'push-ups, pull-ups and squats, phone as a foot sensor': [
    foot('phone-exercise/push-ups-50.csv'),
    foot('phone-exercise/push-ups-uncounted.csv'),
    foot('phone-exercise/pull-ups-10.csv'),
    foot('phone-exercise/squats-uncounted.csv'),
  ],
  'push-ups, pull-ups and squats, phone as a trunk sensor': [
    trunk('phone-exercise/push-ups-50.csv'),
    trunk('phone-exercise/push-ups-uncounted.csv'),
    trunk('phone-exercise/pull-ups-10.csv'),
    trunk('phone-exercise/squats-uncounted.csv'),
  ],
  'quiet standing, force platform': [
    platform('standing-one-plate/BDS00001.csv'),
    platform('standing-one-plate/BDS00013.csv'),
    platform('standing-one-plate/BDS00026.csv'),
    platform('standing-two-plates/PDS13OR1-left.csv'),
    platform('standing-two-plates/PDS13OR1-right.csv'),
    platform('standing-two-plates/PDS13CF1-left.csv'),
    platform('standing-two-plates/PDS13CF1-right.csv'),
  ],
  'stepping on and jumping, force platform': [
    platform('jump-force/jump.csv'),
    platform('stepping-on-and-jump/stepping-on-and-jump.csv'),
  ],
};

/** Heel raises counted in a recording that holds none, with the upper bound of the count. */
export function countedIn({ name, placement, heelLeverM }: NoRaises): {
  readonly attempted: number;
  readonly high: number;
} {
  const { attempted, high } = assessOpen(name, placement, heelLeverM === undefined ? {} : { heelLeverM }).count;
  return { attempted, high };
}

const GRAVITY = 9.80665; // m/s2, ISO 80000-3

interface MassOfStanding {
  readonly name: string;
  readonly platform: number;
  readonly scale: number;
}

function readMasses(most: number): readonly MassOfStanding[] {
  const weight = (name: string): number => {
    const { bodyWeightN } = assessOpen(name, 'platform');
    if (bodyWeightN === null) throw new Error(`${name}: no body weight`);
    return bodyWeightN;
  };
  const one = openTable('standing-one-plate/scale.csv');
  const two = openTable('standing-two-plates/scale.csv');
  const scaleOne = openNumbers('standing-one-plate/scale.csv', 'mass_kg');
  const scaleTwo = openNumbers('standing-two-plates/scale.csv', 'mass_kg');
  return [
    ...one
      .get('file')!
      .slice(0, most)
      .map((file, index) => ({
        name: file,
        platform: weight(`standing-one-plate/${file}`) / GRAVITY,
        scale: scaleOne[index],
      })),
    ...two
      .get('trial')!
      .slice(0, most)
      .map((trial, index) => ({
        name: trial,
        platform:
          (weight(`standing-two-plates/${trial}-left.csv`) + weight(`standing-two-plates/${trial}-right.csv`)) /
          GRAVITY,
        scale: scaleTwo[index],
      })),
  ];
}

const masses = new Map<number, readonly MassOfStanding[]>();

/** Mass by the platform while standing, beside the scale, in the first few recordings of each laboratory or all of them; two plates are added. */
export function massesKg(most = Infinity): readonly MassOfStanding[] {
  const read = masses.get(most) ?? readMasses(most);
  masses.set(most, read);
  return read;
}
