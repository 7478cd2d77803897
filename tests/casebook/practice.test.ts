import { foldVisit, type PracticeSet } from '@surae/casebook';
import type { Json } from '@surae/storage';
import { expect, test } from 'vitest';
import { afterPractice, cutOffPractice, practiceFor } from '../../packages/casebook/src/practice.ts';
import { madeSet } from '../support/made-visit.ts';
import { sampleDocument } from '../support/sample-bodies.ts';

const { choice } = madeSet('left', null);
const raises = [
  { heightM: 0.1, heightUM: 0.002 },
  { heightM: 0.11, heightUM: 0.002 },
];
const done: PracticeSet = {
  id: 'p1',
  choice,
  bytesId: 'b',
  begunAt: '2026-03-01T09:20:00.000+01:00',
  stoppedAt: '2026-03-01T09:21:00.000+01:00',
  raises,
};

test('practice is begun and stopped by events of the visit; a visit without them has none', () => {
  const begun = sampleDocument('visit', 'p', { personId: 'p' });
  expect('practice' in foldVisit(begun, [])).toBe(false);
  const first = sampleDocument('practice-begun', begun.id, { choice, bytesId: 'b' } as object as Json);
  const [running] = foldVisit(begun, [first]).practice!;
  expect(running).toMatchObject({ id: first.id, bytesId: 'b', stoppedAt: null, raises: [] });
  const stopped = sampleDocument('practice-stopped', begun.id, { practiceId: first.id, raises });
  expect(foldVisit(begun, [first, stopped]).practice).toEqual([{ ...running, stoppedAt: stopped.at, raises }]);
  const other = { kind: 'practice-stopped', practiceId: 'nothing', raises } as const;
  expect(afterPractice([done], other, { id: 'x', at: 'now' })).toEqual([done]);
});

test('a set is held against the last practice of its leg that was stopped, with the sensor at the same place', () => {
  const later = { ...done, id: 'p2', stoppedAt: '2026-03-01T09:24:00.000+01:00' };
  expect(practiceFor({ practice: [done, later] }, choice)).toBe(later);
  expect(practiceFor({ practice: [done, { ...later, stoppedAt: null }] }, choice)).toBe(done);
  expect(practiceFor({ practice: [done, { ...later, raises: raises.slice(1) }] }, choice)).toBe(done);
  expect(practiceFor({ practice: [done] }, { ...choice, side: 'right' })).toBeUndefined();
  expect(practiceFor({ practice: [done] }, { ...choice, placement: 'trunk' })).toBeUndefined();
  expect(practiceFor({ practice: [done] }, { ...choice, origin: 'live' })).toBeUndefined();
  expect(practiceFor({}, choice)).toBeUndefined();
  // heights by a string of another length, or of none that was told, are other heights
  const string = { ...choice, stringRestLengthM: 0.1 };
  expect(practiceFor({ practice: [done] }, string)).toBeUndefined();
  const known = { ...done, choice: string };
  expect(practiceFor({ practice: [known] }, string)).toBe(known);
  expect(practiceFor({ practice: [known] }, choice)).toBeUndefined();
});

test('what was practised after a set is not what it was held against', () => {
  expect(practiceFor({ practice: [done] }, choice, '2026-03-01T09:21:00.000+01:00')).toBe(done);
  expect(practiceFor({ practice: [done] }, choice, '2026-03-01T09:20:59.000+01:00')).toBeUndefined();
});

test('a practice is cut off where it is the last of its leg and was never stopped', () => {
  const open = { ...done, id: 'p2', stoppedAt: null };
  expect(cutOffPractice({ practice: [done, open] }, 'left')).toBe(open);
  expect(cutOffPractice({ practice: [open, done] }, 'left')).toBeUndefined();
  expect(cutOffPractice({ practice: [open] }, 'right')).toBeUndefined();
  expect(cutOffPractice({}, 'left')).toBeUndefined();
});
