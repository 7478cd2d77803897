import type { PracticeSet } from '@surae/casebook';
import { expect, test } from 'vitest';
import { heldAgainst } from '../../packages/casebook/src/held-against.ts';
import { madeSet } from '../support/made-visit.ts';
import { toldReport } from '../support/told-visit.ts';

const done: PracticeSet = {
  id: 'p1',
  choice: madeSet('left', null).choice,
  bytesId: 'b',
  begunAt: '2026-03-01T09:20:00.000+01:00',
  stoppedAt: '2026-03-01T09:21:00.000+01:00',
  raises: [
    { heightM: 0.1, heightUM: 0.002 },
    { heightM: 0.11, heightUM: 0.002 },
  ],
};

test('a practice is the reference of the sets whose report took the height from it', () => {
  const reference = { rule: 'best-two-of-familiarisation', heightM: 0.105, heightUM: 0.002, raised: false } as const;
  const held = (from: readonly number[], raised = false) =>
    madeSet('left', {
      ...toldReport('left', { count: 20 }),
      reference: { ...reference, fromRepetitions: from, raised },
    });
  const of = (set: ReturnType<typeof madeSet>, practice = [done]) =>
    heldAgainst({ practice, sets: [set] }, done).map(({ id }) => id);
  expect(of(held([]))).toEqual(['set-left']);
  // its own repetitions, one of them higher than the practice, another practice, and no result
  expect(of(held([1, 2]))).toEqual([]);
  expect(of(held([2], true))).toEqual([]);
  expect(of(held([]), [done, { ...done, id: 'p2', stoppedAt: '2026-03-01T09:24:00.000+01:00' }])).toEqual([]);
  expect(of(madeSet('left', null))).toEqual([]);
  expect(of({ ...held([]), begunAt: '2026-03-01T09:20:30.000+01:00' })).toEqual([]);
});
