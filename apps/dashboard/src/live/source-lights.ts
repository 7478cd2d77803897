import {
  fiveLights,
  type LightFacts,
  type SetupPlacement,
  type Side,
  setupDefaults,
  type Trace,
} from '@surae/analysis';
import { SOURCE_LIGHT_SENTENCES } from '@surae/shared';
import { lightInWords, lightName, seenWords } from './light-words.ts';
import { seenSign } from './set-up-facts.ts';
import type { SetUpLight } from './set-up-light.ts';

/** A source that tests nobody, and what is known where the test is made ready. */
export interface LookedAtSource {
  readonly origin: 'simulated' | 'replayed';
  /** the recording that is played; null before one was chosen, and for a simulated person */
  readonly recording: Trace | null;
  /** the leg that the recording says it is of; null where it does not */
  readonly sideOfRecording: Side | null;
  readonly placement: SetupPlacement;
  readonly side: Side;
  readonly bodyMassKg: number | null;
  readonly massNeeded: boolean;
}

/** Beginning of a recording by which its lights are judged [s]; ours. */
const lightsS = 3;

const words = SOURCE_LIGHT_SENTENCES;

function said(id: SetUpLight['id'], answer: SetUpLight['answer'], code: keyof typeof words): SetUpLight {
  return { id, name: lightName(id), answer, sentence: words[code].text, fix: null };
}

function beginning({ groups }: Trace): Trace {
  return {
    groups: groups.flatMap(({ timesS, channels }) => {
      const after = timesS.findIndex((timeS) => timeS > (timesS[0] ?? 0) + lightsS);
      const count = after === -1 ? timesS.length : after;
      // a group of one sample has no length
      return count < 2
        ? []
        : [
            {
              timesS: timesS.slice(0, count),
              channels: channels.map((channel) => ({ ...channel, samples: channel.samples.slice(0, count) })),
            },
          ];
    }),
  };
}

function factsOf(source: LookedAtSource): LightFacts {
  const { placement, side, sideOfRecording, bodyMassKg, massNeeded, recording } = source;
  return {
    placement,
    silentS: recording === null ? null : 0,
    upAxis: null,
    sign: recording === null ? null : seenSign(recording, null),
    zero: null,
    side: { wanted: side, told: null, ofSensor: sideOfRecording },
    mass: { kg: bodyMassKg, ageDays: null, needed: massNeeded },
    gravityMps2: setupDefaults.gravityMps2,
  };
}

/** Lights of a recording: they are judged by its beginning, and nothing about it can be put right any more. */
function ofRecording(source: LookedAtSource, recording: Trace): readonly SetUpLight[] {
  const lights = fiveLights(beginning(recording), factsOf(source), setupDefaults.lights);
  return lights.map((light): SetUpLight => {
    if (light.reason === 'no-zero') return said('zero', 'cannot-tell', 'played-zero');
    if (light.reason === 'side-missing') return said('side', 'cannot-tell', 'played-side');
    if (light.name === 'mass' && light.reason !== 'nobody-stands' && light.reason !== 'not-still')
      return lightInWords(light);
    return { ...lightInWords(light), sentence: seenWords(light), fix: null };
  });
}

/** The five lights of a source that tests nobody: what can be seen of it, and "cannot tell" for what nobody can see there. */
export function sourceLights(source: LookedAtSource): readonly SetUpLight[] {
  const { origin, recording } = source;
  if (recording !== null) return ofRecording(source, recording);
  // body mass is the one thing that is told and not seen
  const [, , , , mass] = fiveLights({ groups: [] }, { ...factsOf(source), placement: 'inline' }, setupDefaults.lights);
  if (origin === 'simulated') {
    return [
      said('connected', 'yes', 'simulated-there'),
      said('right-way-up', 'cannot-tell', 'simulated-worn'),
      said('zero', 'cannot-tell', 'simulated-zero'),
      said('side', 'yes', 'simulated-side'),
      lightInWords(mass!),
    ];
  }
  return [
    said('connected', 'no', 'played-none'),
    ...(['right-way-up', 'zero', 'side'] as const).map((id) => said(id, 'cannot-tell', 'played-open')),
    lightInWords(mass!),
  ];
}
