import { SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import { endedWithPop, poppedSide, withRupture } from '../../packages/casebook/src/popped.ts';
import { mayTest } from '../../packages/casebook/src/safety-gate.ts';
import { madeSet, madeVisit } from '../support/made-visit.ts';

const now = '2026-03-01T10:00:00.000+01:00';
const pop = { reason: 'safety', painPeak: null, exertion: null, happened: 'pop' } as const;
const answered = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [], at: now };

test('a pop is one of the leg in which it was told, and one that was set aside is none', () => {
  const popped = madeSet('right', null, { end: pop });
  expect(endedWithPop(popped)).toBe(true);
  expect(poppedSide(madeVisit(madeSet('left', null), popped))).toBe('right');
  expect(poppedSide(madeVisit({ ...popped, setAside: true }))).toBeNull();
  // a test that the tester stopped for safety is not one in which something gave way
  const stopped = madeSet('left', null, { end: { reason: 'safety', painPeak: null, exertion: null } });
  expect([
    endedWithPop(stopped),
    poppedSide(madeVisit(stopped)),
    endedWithPop(madeSet('left', null, { end: null })),
  ]).toEqual([false, null, false]);
});

test('after it nobody is tested any more today, whatever was clear before, and no reason opens it', () => {
  expect(mayTest('live', answered, now).allowed).toBe(true);
  const after = { ...withRupture(answered), at: now };
  expect(mayTest('live', after, now)).toEqual({ allowed: false, why: ['locked'] });
  expect(mayTest('live', after, now, 'isometric').allowed).toBe(false);
  const overridden = [{ id: 'safety.rupture', reason: 'felt fine again' }];
  expect(mayTest('live', { ...after, overridden }, now).allowed).toBe(false);
});

test('what was ticked before stays ticked, once, and a list that nobody answered is not made a whole one', () => {
  const before = { ...answered, ticked: ['safety.other-caution', 'safety.rupture'] };
  expect(withRupture(before).ticked).toEqual(['safety.other-caution', 'safety.rupture']);
  expect(withRupture(null)).toMatchObject({ ticked: ['safety.rupture'], seenWhole: false });
});
