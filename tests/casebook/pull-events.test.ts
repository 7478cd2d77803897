import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { SafetyLockError, VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { pullSetOf } from '../../packages/casebook/src/pull-events.ts';
import type { VisitEvent } from '../../packages/casebook/src/visit-events.ts';
import { madeChoice } from '../support/made-pull-visit.ts';

async function book(): Promise<{ book: VisitBook; id: string; keep: (event: VisitEvent) => Promise<string> }> {
  let seconds = 0;
  const clock = { isoNow: () => new Date(Date.UTC(2026, 2, 1, 9, 0, seconds++)).toISOString() };
  const made = new VisitBook(new MemoryStore(), clock, 'test');
  const id = await made.beginVisit('person');
  return { book: made, id, keep: (event) => made.record(id, event) };
}

test('a leg is what its events tell: warm-up, trials with their rests, marks, end', async () => {
  const { book: made, id, keep } = await book();
  const setId = await keep({ kind: 'pull-begun', choice: madeChoice('left') });
  await keep({ kind: 'pull-warm-up', setId, how: 'done' });
  const trialId = await keep({ kind: 'trial-begun', setId, bytesId: 'b1', fromS: 0, restS: null });
  await keep({ kind: 'trial-lifted', setId, trialId, atS: 4.2 });
  await keep({ kind: 'trial-stopped', setId, trialId, toS: 10.1, cutOff: false, suddenDrop: true });
  await keep({ kind: 'trial-begun', setId, bytesId: 'b2', fromS: 71, restS: 60.5 });
  const visit = (await made.visit(id))!;
  expect(pullSetOf(visit, 'left')).toMatchObject({
    warmUp: 'done',
    stoppedAt: null,
    trials: [
      { bytesId: 'b1', fromS: 0, toS: 10.1, restS: null, suddenDrop: true, cutOff: false, liftedAtS: [4.2] },
      { bytesId: 'b2', fromS: 71, toS: null, restS: 60.5, stoppedAt: null, liftedAtS: [] },
    ],
  });
  await keep({ kind: 'pull-stopped', setId });
  await keep({ kind: 'pull-end', setId, end: { reason: 'trials-done', painPeak: 1, exertion: null } });
  await keep({ kind: 'pull-rest-over', restS: 121 });
  const later = (await made.visit(id))!;
  expect(pullSetOf(later, 'left')).toMatchObject({ end: { reason: 'trials-done', painPeak: 1, exertion: null } });
  expect(pullSetOf(later, 'left')?.stoppedAt).not.toBeNull();
  expect(later.pullRestS).toBe(121);
  expect(later.sets).toEqual([]);
});

test('trials that were set aside do not count, and stay', async () => {
  const { book: made, id, keep } = await book();
  const setId = await keep({ kind: 'pull-begun', choice: madeChoice('right') });
  await keep({ kind: 'pull-aside', setId, why: 'set-up' });
  const visit = (await made.visit(id))!;
  expect(pullSetOf(visit, 'right')).toBeUndefined();
  expect(visit.pulls).toMatchObject([{ setAside: true, setAsideWhy: 'set-up' }]);
});

test('an event about trials that are not there changes nothing', async () => {
  const { book: made, id, keep } = await book();
  const before = (await made.visit(id))!;
  await keep({ kind: 'pull-stopped', setId: 'nothing' });
  await keep({ kind: 'trial-lifted', setId: 'nothing', trialId: 'nothing', atS: 1 });
  expect({ ...(await made.visit(id)), pulls: undefined }).toEqual({ ...before, pulls: undefined });
});

test('no trial of a person is begun when a ticked line keeps from a maximal isometric effort', async () => {
  const { SAFETY_LIST_VERSION } = await import('@surae/shared');
  const { keep } = await book();
  const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: ['safety.heart'], overridden: [] };
  await keep({ kind: 'visit-safety', safety });
  await expect(keep({ kind: 'pull-begun', choice: madeChoice('left', { origin: 'live' }) })).rejects.toThrow(
    SafetyLockError,
  );
  await expect(keep({ kind: 'trial-begun', setId: 'x', bytesId: 'b', fromS: 0, restS: null })).rejects.toThrow(
    SafetyLockError,
  );
  // raises are not what the line speaks of, and a simulated person is nobody
  const choice = {
    side: 'left',
    protocolId: 'p',
    protocolFingerprint: 'f',
    placement: 'heel',
    origin: 'live',
  } as const;
  await keep({ kind: 'set-begun', choice, bytesId: 'b' });
  await keep({ kind: 'pull-begun', choice: madeChoice('left') });
});
