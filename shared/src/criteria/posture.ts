import type { CriterionEntry } from './criterion-entry.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** How the body helps. */
export const POSTURE_CRITERIA = {
  knee: {
    name: 'knee',
    sentence: 'Knee helped',
    faultKind: 'posture',
    by: {
      heel: 'not-observed',
      foot: 'not-observed',
      trunk: 'not-observed',
      platform: 'inferred',
      hand: 'not-observed',
    },
    note: 'A force signature only asks for a second look; a sensor on the shank or a tester sees the knee.',
    parameters: {
      kneeFlexionMost: {
        ...practice,
        id: 'parameter.knee-flexion-most',
        unit: 'deg',
        value: 20,
        source: 'common practice; size of the drift from Hébert-Losier 2011 J Orthop Sports Phys Ther',
        allowed: { least: 0, most: 90 },
      },
      kneeChangeMost: {
        ...practice,
        id: 'parameter.knee-change-most',
        unit: 'deg',
        value: 10,
        allowed: { least: 0, most: 90 },
      },
      kneeDipFraction: {
        ...practice,
        id: 'parameter.knee-dip-fraction',
        unit: '1',
        value: 0.05,
        allowed: { least: 0, most: 1 },
      },
      kneePeakFraction: {
        ...practice,
        id: 'parameter.knee-peak-fraction',
        unit: '1',
        value: 1.1,
        allowed: { least: 1, most: 3 },
      },
    },
  },
  lean: {
    name: 'lean of the trunk',
    sentence: 'Leaned',
    faultKind: 'posture',
    by: {
      heel: 'not-observed',
      foot: 'not-observed',
      trunk: 'measured',
      platform: 'not-observed',
      hand: 'not-observed',
    },
    note: 'A platform would need its centre of pressure, and then infers it with caution.',
    parameters: {
      leanMost: { ...practice, id: 'parameter.lean-most', unit: 'deg', value: 10, allowed: { least: 1, most: 90 } },
    },
  },
  hands: {
    name: 'hands',
    sentence: 'Pushed with the hands',
    faultKind: 'support',
    by: {
      heel: 'not-observed',
      foot: 'not-observed',
      trunk: 'not-observed',
      platform: 'measured',
      hand: 'not-observed',
    },
    note: 'Only the force under the foot shows weight that the hands carry.',
    parameters: {
      handsFraction: {
        ...practice,
        id: 'parameter.hands-fraction',
        unit: '1',
        value: 0.05,
        allowed: { least: 0.01, most: 1 },
      },
      handsLeast: { ...practice, id: 'parameter.hands-least', unit: 's', value: 0.5, allowed: { least: 0.1, most: 5 } },
    },
  },
} as const satisfies Readonly<Record<string, CriterionEntry>>;
