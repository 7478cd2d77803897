import { expect, test } from 'vitest';
import { practiceOf } from '../../../packages/exchange/src/record/practice-of.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';
import { toldReport } from '../../support/told-visit.ts';

const reference = {
  rule: 'best-two-of-familiarisation',
  heightM: 0.105,
  heightUM: 0.002,
  fromRepetitions: [],
  raised: false,
} as const;
const set = madeSet('left', { ...toldReport('left', { count: 20 }), reference });
const raises = [
  { heightM: 0.1, heightUM: 0.002 },
  { heightM: 0.11, heightUM: 0.002 },
];
const begunAt = '2026-03-01T09:20:00.000+01:00';
const practice = { id: 'p', choice: set.choice, bytesId: 'b', begunAt, stoppedAt: begunAt, raises };

test('practice leaves by visit and leg with the trials that were held against it', () => {
  const cut = { ...practice, id: 'cut', stoppedAt: null, raises: [] };
  const visit = { ...madeVisit(set), practice: [cut, practice] };
  const of = { person: 'person', visit: 'visit', side: 'left', at: begunAt, placement: 'heel', origin: 'simulated' };
  expect(practiceOf([visit, madeVisit()])).toEqual([
    { ...of, key: 'cut', protocol: set.choice.protocolId, stopped: false, raises: [], trials: [] },
    { ...of, key: 'p', protocol: set.choice.protocolId, stopped: true, raises, trials: ['set-left'] },
  ]);
});
