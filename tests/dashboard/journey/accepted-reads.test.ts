import { expect, test } from 'vitest';
import { acceptedPast, acceptedVisits } from '../../../apps/dashboard/src/journey/accepted-reads.ts';
import { judged } from '../../support/detected-set.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

const body = { setId: 'set-left', repetition: 3, criterion: null, verdict: 'no', why: null } as const;
const byHand = [{ id: 'h', at: '2026-03-01T09:32:00Z', author: 'K', body }];
const report = judged({ heightsM: [0.1, 0.1, 0.1, 0.1] });
const plain = madeVisit(madeSet('left', report));
const flipped = madeVisit(madeSet('left', report, { byHand }));

test('visits that nobody judged by hand are given as they are', async () => {
  const visits = [plain];
  expect(await acceptedVisits(visits)).toBe(visits);
  expect(await acceptedPast(undefined)).toBeUndefined();
});

test('a visit and those before it count as they were accepted', async () => {
  const read = (await acceptedPast({ visit: plain, person: undefined, earlier: [flipped] }))!;
  expect(read.visit).toBe(plain);
  expect(read.earlier[0].sets[0].report!.count.valid).toBe(3);
  expect(read.earlier[0].sets[0].automatic).toBe(report);
  const now = (await acceptedPast({ visit: flipped, person: undefined, earlier: [] }))!;
  expect(now.visit.sets[0].report!.count.valid).toBe(3);
});
