import type { Protocol, RepetitionMaximum } from '../protocol.ts';
import { FLOOR } from './to-fatigue.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const from = FLOOR.parameters;

/** When a set at a load says what could be lifted twelve times: never beyond the counts that it was made for. */
const TWELVE: RepetitionMaximum = {
  ...practice,
  id: 'seated.repetition-maximum',
  unit: '1',
  source:
    'Epley 1985; Brzycki 1993 J Phys Educ Recreat Dance 64:88 (both from memory); limits: common practice, no source',
  mark: 'from-memory',
  target: 12,
  countLeast: 8,
  countMost: 15,
};

/** Seated, forefoot on a block of 5 to 10 cm, the load on the knee, two seconds up and two down. */
export const SEATED_BLOCK: Protocol = {
  ...FLOOR,
  ...practice,
  id: 'seated.block',
  title: 'Seated heel raises with a load on the knee, forefoot on a block, two seconds up and two down',
  parameters: {
    ...from,
    surface: { ...from.surface, ...practice, id: 'seated.surface', value: 'step' },
    knee: { ...from.knee, ...practice, id: 'seated.knee', value: 'bent' },
    kneeFlexionHeld: { ...from.kneeFlexionHeld, ...practice, id: 'seated.knee-flexion-held', value: 90 },
    kneeFlexionMost: { ...from.kneeFlexionMost, ...practice, id: 'seated.knee-flexion-most', value: null },
    kneeChangeMost: { ...from.kneeChangeMost, ...practice, id: 'seated.knee-change-most', value: null },
    kneeDipFraction: { ...from.kneeDipFraction, ...practice, id: 'seated.knee-dip-fraction', value: null },
    kneePeakFraction: { ...from.kneePeakFraction, ...practice, id: 'seated.knee-peak-fraction', value: null },
    leanMost: { ...from.leanMost, ...practice, id: 'seated.lean-most', value: null },
    support: { ...from.support, ...practice, id: 'seated.support', value: 'none' },
    handsFraction: { ...from.handsFraction, ...practice, id: 'seated.hands-fraction', value: null },
    externalMass: {
      ...from.externalMass,
      ...practice,
      id: 'seated.external-mass',
      value: 'on-knee',
      allowed: ['on-knee'],
    },
    cycleTarget: { ...from.cycleTarget, ...practice, id: 'seated.cycle-target', value: 4 },
    upTarget: { ...from.upTarget, ...practice, id: 'seated.up-target', value: 2 },
    downTarget: { ...from.downTarget, ...practice, id: 'seated.down-target', value: 2 },
    lowDwellMost: { ...from.lowDwellMost, ...practice, id: 'seated.low-dwell-most', value: 1.2 },
  },
  requiredSignals: ['heel-height | acceleration at the foot'],
  outputs: [...FLOOR.outputs, 'load-repetition-pair', 'repetition-maximum'],
  repetitionMaximum: TWELVE,
  remarks: [
    'Not for pain at the insertion: the heel starts below the toes. Take the floor instead.',
    'The load on the knee is part of the result: a count without it says little. Half of body weight is a usual first load.',
    'Work counts the load and the rise of the knee; the weight of the body is carried by the seat.',
    'Never pooled with another tempo, surface or load.',
  ],
};

/** The same with the forefoot on the floor, for pain at the insertion. */
export const SEATED_FLOOR: Protocol = {
  ...SEATED_BLOCK,
  id: 'seated.floor',
  title: 'Seated heel raises with a load on the knee, level floor, two seconds up and two down',
  parameters: {
    ...SEATED_BLOCK.parameters,
    surface: { ...from.surface, ...practice, id: 'seated-floor.surface', value: 'floor' },
  },
  remarks: ['The surface for pain at the insertion.', ...SEATED_BLOCK.remarks.slice(1)],
};

function slow(protocol: Protocol, id: string, title: string): Protocol {
  const { parameters } = protocol;
  return {
    ...protocol,
    id,
    title,
    parameters: {
      ...parameters,
      cycleTarget: { ...parameters.cycleTarget, id: 'seated-slow.cycle-target', value: 6 },
      upTarget: { ...parameters.upTarget, id: 'seated-slow.up-target', value: 3 },
      downTarget: { ...parameters.downTarget, id: 'seated-slow.down-target', value: 3 },
      lowDwellMost: { ...parameters.lowDwellMost, id: 'seated-slow.low-dwell-most', value: 1.8 },
    },
  };
}

/** Three seconds up and three down. */
export const SEATED_BLOCK_SLOW: Protocol = slow(
  SEATED_BLOCK,
  'seated.block-slow',
  'Seated heel raises with a load on the knee, forefoot on a block, three seconds up and three down',
);

/** Three seconds up and three down, level floor. */
export const SEATED_FLOOR_SLOW: Protocol = slow(
  SEATED_FLOOR,
  'seated.floor-slow',
  'Seated heel raises with a load on the knee, level floor, three seconds up and three down',
);
