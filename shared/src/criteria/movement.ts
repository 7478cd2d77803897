import type { CriterionEntry } from './criterion-entry.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** How far and when the heel moves. */
export const MOVEMENT_CRITERIA = {
  height: {
    name: 'height',
    sentence: 'Not high enough',
    faultKind: 'height',
    by: { heel: 'measured', foot: 'measured', trunk: 'not-observed', platform: 'not-observed', hand: 'not-observed' },
    note: 'The criterion is on the height of the heel.',
    parameters: {
      heightFraction: {
        ...practice,
        id: 'parameter.height-fraction',
        unit: '1',
        value: 0.75,
        allowed: { least: 0, most: 1 },
      },
    },
  },
  return: {
    name: 'heel back down',
    sentence: 'Heel did not come back down',
    faultKind: null,
    by: { heel: 'measured', foot: 'measured', trunk: 'inferred', platform: 'measured', hand: 'not-observed' },
    note: 'Trunk: the level is known only from one standstill to the next.',
    parameters: {
      returnHeight: {
        ...practice,
        id: 'parameter.return-height',
        unit: 'm',
        value: 0.01,
        allowed: { least: 0, most: 0.1 },
      },
      returnFraction: {
        ...practice,
        id: 'parameter.return-fraction',
        unit: '1',
        value: 0.1,
        allowed: { least: 0, most: 1 },
      },
    },
  },
  tempo: {
    name: 'tempo',
    sentence: 'Off the beat',
    faultKind: 'tempo',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured', hand: 'not-observed' },
    note: 'The period is judged, not the phase against the beat.',
    parameters: {
      cycleTolerance: {
        ...practice,
        id: 'parameter.cycle-tolerance',
        unit: '1',
        value: 0.2,
        allowed: { least: 0.01, most: 1 },
      },
      cycleFaultsInARow: {
        ...practice,
        id: 'parameter.cycle-faults-in-a-row',
        unit: '1',
        value: 2,
        allowed: { least: 1, most: 10 },
      },
    },
  },
  rest: {
    name: 'rest at the bottom',
    sentence: 'Rested at the bottom',
    faultKind: 'tempo',
    by: { heel: 'measured', foot: 'measured', trunk: 'measured', platform: 'measured', hand: 'not-observed' },
    note: 'From the end of one repetition to the start of the next.',
    parameters: {
      lowDwellMost: {
        ...practice,
        id: 'parameter.low-dwell-most',
        unit: 's',
        value: 0.6,
        allowed: { least: 0.1, most: 60 },
      },
    },
  },
} as const satisfies Readonly<Record<string, CriterionEntry>>;
