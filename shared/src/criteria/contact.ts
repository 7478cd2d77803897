import type { CriterionEntry } from './criterion-entry.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** What meets the floor, and whether the samples are there to tell. */
export const CONTACT_CRITERIA = {
  bounce: {
    name: 'bounce',
    sentence: 'Bounced',
    faultKind: null,
    by: { heel: 'measured', foot: 'inferred', trunk: 'inferred', platform: 'measured', hand: 'not-observed' },
    note: 'Foot and trunk see the speed at contact through their own filtering.',
    parameters: {
      bounceSpeed: {
        ...practice,
        id: 'parameter.bounce-speed',
        unit: 'm/s',
        value: 0.35,
        allowed: { least: 0.05, most: 3 },
      },
      bounceDwell: {
        ...practice,
        id: 'parameter.bounce-dwell',
        unit: 's',
        value: 0.15,
        allowed: { least: 0, most: 2 },
      },
      bounceForceFraction: {
        ...practice,
        id: 'parameter.bounce-force-fraction',
        unit: '1',
        value: 1.25,
        allowed: { least: 1, most: 5 },
      },
    },
  },
  'other-foot': {
    name: 'other foot',
    sentence: 'Other foot touched',
    faultKind: 'support',
    by: {
      heel: 'not-observed',
      foot: 'not-observed',
      trunk: 'not-observed',
      platform: 'not-observed',
      hand: 'not-observed',
    },
    note: 'A second sensor or a tester sees the other foot.',
    parameters: {},
  },
  gap: {
    name: 'missing samples',
    sentence: 'Cannot judge: data gap',
    faultKind: null,
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured', hand: 'not-observed' },
    note: 'Missing samples are seen by every placement.',
    parameters: {
      gapMost: { ...practice, id: 'parameter.gap-most', unit: 's', value: 0.25, allowed: { least: 0.02, most: 2 } },
    },
  },
} as const satisfies Readonly<Record<string, CriterionEntry>>;
