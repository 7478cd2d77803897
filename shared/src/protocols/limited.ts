import type { Protocol } from '../protocol.ts';
import { FLOOR } from './to-fatigue.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

export const COUNT_30_S: Protocol = {
  ...FLOOR,
  ...practice,
  id: 'single-leg.count-30s',
  title: 'Single-leg heel raises in 30 seconds',
  parameters: {
    ...FLOOR.parameters,
    cue: { ...FLOOR.parameters.cue, ...practice, id: 'count-30s.cue', value: 'none' },
    duration: { ...FLOOR.parameters.duration, id: 'count-30s.duration', value: 30 },
  },
  endConditions: ['fixed-count-done', 'pain', 'other-stop', 'heel-cannot-leave', 'safety', 'technical'],
  remarks: ['A rate, for screening and older adults: not a count to fatigue. No beat is given and none is judged.'],
};

export const TOLERANCE_PROBE: Protocol = {
  ...FLOOR,
  ...practice,
  id: 'single-leg.tolerance-10',
  title: 'Tolerance probe: ten single-leg heel raises at the beat',
  parameters: {
    ...FLOOR.parameters,
    fixedCount: { ...FLOOR.parameters.fixedCount, id: 'tolerance-10.fixed-count', value: 10 },
  },
  endConditions: ['fixed-count-done', 'pain', 'other-stop', 'safety', 'technical'],
  outputs: ['count', 'height', 'tempo', 'repetition-table', 'pain'],
  remarks: [
    'The outcome is pain during, after and on the next morning; the count is no capacity.',
    'The first test for an irritable tendon.',
  ],
};
