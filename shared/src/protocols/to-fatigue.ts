import type { Protocol } from '../protocol.ts';
import { BASE_PARAMETERS } from './base-parameters.ts';

const ends = [
  'fatigue',
  'pain',
  'other-stop',
  'heel-cannot-leave',
  'two-prompted-faults',
  'safety',
  'technical',
  'cap',
] as const;

const outputs = [
  'count',
  'height',
  'displacement',
  'work',
  'power',
  'tempo',
  'time-under-tension',
  'fatigue',
  'repetition-table',
] as const;

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

export const INCLINE_10: Protocol = {
  id: 'single-leg.incline10',
  version: '1',
  unit: '1',
  source: 'Sleeswijk Visser 2025 Braz J Phys Ther 29:101188; Hébert-Losier 2017 Physiotherapy 103:446',
  mark: 'read',
  title: 'Single-leg heel raise to fatigue, toes up on a 10 degree board',
  test: 'heel-raise',
  parameters: BASE_PARAMETERS,
  requiredSignals: ['heel-height | acceleration | force'],
  endConditions: ends,
  outputs,
  remarks: ['Not for pain at the insertion: the heel starts below the toes.', 'Never compared across surfaces.'],
};

export const FLOOR: Protocol = {
  ...INCLINE_10,
  ...practice,
  id: 'single-leg.floor',
  title: 'Single-leg heel raise to fatigue, level floor',
  parameters: {
    ...BASE_PARAMETERS,
    surface: { ...BASE_PARAMETERS.surface, ...practice, id: 'floor.surface', value: 'floor' },
  },
  remarks: ['The surface for pain at the insertion.', 'Never compared across surfaces.'],
};

export const BENT_KNEE: Protocol = {
  ...FLOOR,
  id: 'single-leg.bent-knee',
  source: 'Hébert-Losier & Holmberg 2013 Clin Biomech 28:664',
  mark: 'read',
  title: 'Single-leg heel raise to fatigue, knee held at 45 degrees',
  parameters: {
    ...FLOOR.parameters,
    knee: { ...BASE_PARAMETERS.knee, id: 'bent-knee.knee', value: 'bent' },
    kneeFlexionHeld: {
      ...BASE_PARAMETERS.kneeFlexionHeld,
      id: 'bent-knee.knee-flexion-held',
      source: 'Hébert-Losier & Holmberg 2013 Clin Biomech 28:664; 30 degrees is also used',
      mark: 'read',
      value: 45,
    },
    kneeFlexionMost: { ...BASE_PARAMETERS.kneeFlexionMost, ...practice, id: 'bent-knee.knee-flexion-most', value: 60 },
  },
  remarks: [
    'About three repetitions more than with a straight knee are to be expected.',
    'Needs a sensor on shank or thigh, or a tester who watches the knee: otherwise the knee is not observed.',
    'A bent knee does not lower the peak load of the tendon (Weinert-Aplin 2015 J Sports Sci Med 14:459).',
  ],
};

export const STEP: Protocol = {
  ...INCLINE_10,
  ...practice,
  id: 'single-leg.step',
  title: 'Single-leg heel raise to fatigue over the edge of a step',
  parameters: {
    ...BASE_PARAMETERS,
    surface: { ...BASE_PARAMETERS.surface, ...practice, id: 'step.surface', value: 'step' },
  },
  remarks: [
    'Mid-portion pain of low irritability only; never for pain at the insertion.',
    'Height above the level of rest and depth below it are given apart.',
  ],
};

export const DOUBLE_LEG: Protocol = {
  ...FLOOR,
  ...practice,
  id: 'double-leg.floor',
  title: 'Double-leg heel raise to fatigue, level floor',
  parameters: {
    ...FLOOR.parameters,
    legs: { ...BASE_PARAMETERS.legs, ...practice, id: 'double-leg.legs', value: 'double' },
  },
  remarks: ['For fewer than three single-leg raises.', 'A count of two legs is never halved into a count of one side.'],
};

export const SLOW_TEMPO: Protocol = {
  ...FLOOR,
  ...practice,
  id: 'single-leg.slow',
  title: 'Single-leg heel raise to fatigue, two seconds up and two seconds down',
  parameters: {
    ...FLOOR.parameters,
    cycleTarget: { ...BASE_PARAMETERS.cycleTarget, ...practice, id: 'slow.cycle-target', value: 4 },
    upTarget: { ...BASE_PARAMETERS.upTarget, ...practice, id: 'slow.up-target', value: 2 },
    downTarget: { ...BASE_PARAMETERS.downTarget, ...practice, id: 'slow.down-target', value: 2 },
    lowDwellMost: { ...BASE_PARAMETERS.lowDwellMost, id: 'slow.low-dwell-most', value: 1.2 },
  },
  remarks: ['Never pooled with another tempo (Hébert-Losier 2025, doi 10.17605/OSF.IO/EJN87).'],
};

export const LOADED: Protocol = {
  ...FLOOR,
  ...practice,
  id: 'single-leg.loaded',
  title: 'Single-leg heel raise to fatigue with a fixed external load',
  parameters: {
    ...FLOOR.parameters,
    externalMass: { ...BASE_PARAMETERS.externalMass, id: 'loaded.external-mass', value: 'declared' },
  },
  remarks: ['The external mass enters work; without it work is withheld.'],
};
