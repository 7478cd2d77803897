import { expect, test } from 'vitest';
import { betweenTestsS, earlierTest, restBetweenTestsS } from '../../packages/casebook/src/test-rest.ts';
import { madePullSet, madePullVisit } from '../support/made-pull-visit.ts';
import { madeSet } from '../support/made-visit.ts';

// raises stop at 9:31:40, pushes are begun at 9:30:00 and stop at 9:34:00 unless a case says otherwise
const raises = madeSet('left', null);

test('five minutes lie between two different tests of a leg', () => {
  expect(betweenTestsS).toBe(300);
});

test('the other test of the same leg is told with its time ago; the other leg is no matter', () => {
  const visit = { ...madePullVisit(), sets: [raises] };
  const now = '2026-03-01T09:33:40.000+01:00';
  expect(earlierTest(visit, 'left', 'isometric', now)).toEqual({ test: 'heel-raise', agoS: 120 });
  expect(earlierTest(visit, 'right', 'isometric', now)).toBeUndefined();
  expect(earlierTest(visit, 'left', 'heel-raise', now)).toBeUndefined();
  expect(earlierTest(visit, 'left', 'isometric', 'never')).toEqual({ test: 'heel-raise', agoS: null });
});

test('the rest between two tests runs from the stop of the first to the begin of the second, whichever that was', () => {
  const after = madePullSet('left', [], { begunAt: '2026-03-01T09:35:00.000+01:00' });
  expect(restBetweenTestsS({ ...madePullVisit(after), sets: [raises] }, 'left')).toBe(200);
  const before = madePullSet('left', [], {
    begunAt: '2026-03-01T09:20:00.000+01:00',
    stoppedAt: '2026-03-01T09:24:12.000+01:00',
  });
  expect(restBetweenTestsS({ ...madePullVisit(before), sets: [raises] }, 'left')).toBe(360);
  expect(restBetweenTestsS(madePullVisit(after), 'left')).toBeNull();
});
