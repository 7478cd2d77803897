import { CRITERION_PARAMETERS } from '../criterion.ts';
import type { ProtocolParameters } from '../protocol.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const published = {
  version: '1',
  source: 'Sleeswijk Visser 2025 Braz J Phys Ther 29:101188; Hébert-Losier 2017 Physiotherapy 103:446',
  mark: 'read',
} as const;
const ours = { version: '1', source: 'ours', mark: 'computed' } as const;

/** How the test is set up and cued: single leg on the 10 degree incline at one repetition every two seconds. */
const setup = {
  surface: {
    ...published,
    id: 'parameter.surface',
    unit: '1',
    value: 'incline10',
    allowed: ['floor', 'incline10', 'step'],
  },
  legs: { ...published, id: 'parameter.legs', unit: '1', value: 'single', allowed: ['single', 'double'] },
  knee: { ...published, id: 'parameter.knee', unit: '1', value: 'straight', allowed: ['straight', 'bent'] },
  kneeFlexionHeld: {
    ...practice,
    id: 'parameter.knee-flexion-held',
    unit: 'deg',
    value: 0,
    allowed: { least: 0, most: 90 },
  },
  support: {
    ...published,
    id: 'parameter.support',
    unit: '1',
    value: 'fingertips',
    allowed: ['fingertips', 'rail', 'none'],
  },
  footwear: {
    ...practice,
    id: 'parameter.footwear',
    unit: '1',
    value: 'barefoot',
    allowed: ['barefoot', 'thin-sock', 'shoe'],
  },
  cue: { ...published, id: 'parameter.cue', unit: '1', value: 'metronome', allowed: ['metronome', 'light', 'none'] },
  encouragement: {
    ...practice,
    id: 'parameter.encouragement',
    unit: '1',
    value: 'scripted',
    allowed: ['scripted', 'none'],
  },
  externalMass: {
    ...practice,
    id: 'parameter.external-mass',
    unit: '1',
    value: 'none',
    allowed: ['none', 'declared'],
  },
  cycleTarget: {
    ...published,
    id: 'parameter.cycle-target',
    unit: 's',
    value: 2,
    allowed: { least: 0.5, most: 20 },
  },
  upTarget: { ...published, id: 'parameter.up-target', unit: 's', value: 1, allowed: { least: 0.25, most: 10 } },
  downTarget: { ...published, id: 'parameter.down-target', unit: 's', value: 1, allowed: { least: 0.25, most: 10 } },
} as const satisfies Partial<ProtocolParameters>;

/** What is a repetition at all, what its height is held against, and when the test is over. */
const set = {
  cycleLeast: { ...practice, id: 'parameter.cycle-least', unit: 's', value: 0.5, allowed: { least: 0.2, most: 5 } },
  heightLeast: {
    ...practice,
    id: 'parameter.height-least',
    unit: 'm',
    value: 0.02,
    allowed: { least: 0.002, most: 0.1 },
  },
  fallFraction: { ...practice, id: 'parameter.fall-fraction', unit: '1', value: 0.5, allowed: { least: 0.1, most: 1 } },
  referenceRule: {
    ...ours,
    id: 'parameter.reference-rule',
    unit: '1',
    value: 'best-two-of-first-repetitions',
    allowed: ['best-two-of-familiarisation', 'best-two-of-first-repetitions'],
  },
  referenceRaises: {
    ...practice,
    id: 'parameter.reference-raises',
    unit: '1',
    value: 5,
    allowed: { least: 1, most: 20 },
  },
  referenceBest: { ...practice, id: 'parameter.reference-best', unit: '1', value: 2, allowed: { least: 1, most: 5 } },
  referenceRaisedBy: {
    ...practice,
    id: 'parameter.reference-raised-by',
    unit: '1',
    value: 0.05,
    allowed: { least: 0, most: 1 },
  },
  endFaultsInARow: {
    ...published,
    id: 'parameter.end-faults-in-a-row',
    unit: '1',
    value: 2,
    allowed: { least: 1, most: 10 },
  },
  repetitionCap: {
    ...practice,
    id: 'parameter.repetition-cap',
    unit: '1',
    value: null,
    allowed: { least: 1, most: 1000 },
  },
  fixedCount: { ...practice, id: 'parameter.fixed-count', unit: '1', value: null, allowed: { least: 1, most: 100 } },
  duration: { ...practice, id: 'parameter.duration', unit: 's', value: null, allowed: { least: 5, most: 600 } },
  painLimit: {
    ...published,
    id: 'parameter.pain-limit',
    unit: '1',
    value: 5,
    source: 'Silbernagel 2007 Am J Sports Med (pain monitoring)',
    mark: 'second-hand',
    allowed: { least: 0, most: 10 },
  },
} as const satisfies Partial<ProtocolParameters>;

/** The parameters of the single-leg heel raise to fatigue; every other protocol states what it changes. */
export const BASE_PARAMETERS: ProtocolParameters = { ...setup, ...CRITERION_PARAMETERS, ...set };
