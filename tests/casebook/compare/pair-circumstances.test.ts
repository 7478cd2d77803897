import { noHistory, pairCircumstances, type Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { madePullSet } from '../../support/made-pull-visit.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

const right = madeSet('right', null);
const left = madeSet('left', null, { begunAt: '2026-03-01T09:34:00.000+01:00' });

function answered(ticked: readonly string[], seenWhole = true): Visit {
  const safety = { listVersion: '1', seenWhole, ticked, overridden: [], at: '2026-03-01T09:26:00.000+01:00' };
  return { ...madeVisit(right, left), safety, history: { ...noHistory, about: [] } };
}

test('nothing told is nothing known', () => {
  expect(pairCircumstances(madeVisit())).toEqual({
    sore: { left: null, right: null },
    first: null,
    restS: null,
    sameDay: null,
    sameSource: null,
    earlierInjury: { left: null, right: null },
    nerveSigns: null,
  });
});

test('order, day, source and rest come from the sets themselves', () => {
  // stopped at 9:31:40, the next begun at 9:34:00
  expect(pairCircumstances(madeVisit(right, left))).toMatchObject({
    first: 'right',
    restS: 140,
    sameDay: true,
    sameSource: true,
  });
  const dayAfter = { ...left, begunAt: '2026-03-02T09:34:00.000+01:00' };
  const replayed = { ...left, choice: { ...left.choice, origin: 'replayed' } as const };
  expect(pairCircumstances(madeVisit(right, dayAfter)).sameDay).toBe(false);
  expect(pairCircumstances(madeVisit(right, replayed)).sameSource).toBe(false);
});

test('a leg is sore wherever it is sore, and not asked is not the same as not sore', () => {
  const { sore } = pairCircumstances({ ...madeVisit(), sore: { left: 'insertion', right: 'no' } });
  expect(sore).toEqual({ left: true, right: false });
  expect(pairCircumstances({ ...madeVisit(), sore: { left: 'no', right: null } }).sore).toEqual({
    left: false,
    right: null,
  });
});

test('signs of a nerve are there when ticked, absent only when the whole list was seen', () => {
  expect(pairCircumstances(answered(['safety.nerve-vessel'])).nerveSigns).toBe(true);
  expect(pairCircumstances(answered([])).nerveSigns).toBe(false);
  const before = answered(['safety.nerve-vessel']).safety!;
  expect(pairCircumstances({ ...answered([]), earlierSafety: [before] }).nerveSigns).toBe(true);
  expect(pairCircumstances(answered([], false)).nerveSigns).toBeNull();
  expect(pairCircumstances(madeVisit(right, left)).nerveSigns).toBeNull();
  // the list asks about weakness that grows; one that stays is asked for by itself
  expect(pairCircumstances({ ...answered([]), history: noHistory }).nerveSigns).toBeNull();
  expect(pairCircumstances({ ...answered([]), history: { ...noHistory, about: ['nerve-weakness'] } }).nerveSigns).toBe(
    true,
  );
});

test('each test of a visit has its own order, rest, day and source', () => {
  const pushed = madePullSet('left', []);
  const later = { ...madePullSet('right', []), begunAt: '2026-03-01T09:37:00.000+01:00' };
  const pulls = [pushed, { ...later, choice: { ...later.choice, origin: 'replayed' as const } }];
  const visit = { ...madeVisit(right, left), pulls };
  expect(pairCircumstances(visit)).toMatchObject({ first: 'right', restS: 140, sameSource: true });
  // stopped at 9:34:00, the next begun at 9:37:00
  expect(pairCircumstances(visit, 'isometric')).toMatchObject({
    first: 'left',
    restS: 180,
    sameDay: true,
    sameSource: false,
  });
});
