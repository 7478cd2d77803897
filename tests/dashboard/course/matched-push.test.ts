import type { PullSet } from '@surae/casebook';
import { MATCHED_PUSH } from '@surae/shared';
import { expect, test } from 'vitest';
import { pushHead, pushPains, pushWords } from '../../../apps/dashboard/src/course/matched-push.ts';
import { advisedPerson, inMarch } from '../../support/advised-person.ts';
import { madeChoice, madePullSet, madePullVisit, madeTrial } from '../../support/made-pull-visit.ts';

const pushed = (side: 'left' | 'right', painPeak: number | null, changes: Partial<PullSet> = {}) =>
  madePullSet(side, [madeTrial(side, 0)], {
    choice: madeChoice(side, { origin: 'live' }),
    end: { reason: 'trials-done', painPeak, exertion: 9 },
    ...changes,
  });
const of = (...pulls: PullSet[]) => {
  const visit = { ...madePullVisit(...pulls), begunAt: `${inMarch(8)}T09:00:00.000+01:00` };
  return pushPains(advisedPerson({ visits: [visit] }), inMarch(31));
};

test('the worst pain of all trials is no pain at a share of the best push: it is not known, and said so with the reason', () => {
  const pains = of(pushed('right', 4));
  expect(pains).toEqual([{ on: inMarch(8), side: 'right', pain: null }]);
  const [why, instead, share] = pushWords(pains);
  expect(why).toBe(
    'Cannot tell, legs that pushed: 1. Pain is asked once for a leg, as the worst of all its trials, and each trial goes as hard as it can. At which force it came is not known.',
  );
  expect(instead).toMatch(/a hold of the plan with a weight that stays the same/);
  expect(share).toMatch(/Common practice, no source\.$/);
});

test('without any pain there was none at any force; a pain that was not told is not none', () => {
  expect(of(pushed('left', 0), pushed('right', null)).map(({ pain }) => pain)).toEqual([0, null]);
  expect(pushWords(of(pushed('left', 0)))).toEqual([
    '8 Mar 2026, left: no pain in any trial, so none at this share either.',
    expect.stringContaining('Common practice, no source.'),
  ]);
});

test('a push of nobody, one that was set aside, one without an end and one of a later day say nothing', () => {
  expect(of(pushed('right', 4, { choice: madeChoice('right') }))).toEqual([]);
  expect(of(pushed('right', 4, { setAside: true }))).toEqual([]);
  expect(of(pushed('right', 4, { end: null }))).toEqual([]);
  const visit = { ...madePullVisit(pushed('right', 4)), begunAt: `${inMarch(8)}T09:00:00.000+01:00` };
  expect(pushPains(advisedPerson({ visits: [visit] }), inMarch(7))).toEqual([]);
  expect(pushWords([])).toEqual([]);
});

test('the share is told with its mark: six tenths, common practice', () => {
  expect([MATCHED_PUSH.value, MATCHED_PUSH.mark, pushHead()]).toEqual([
    0.6,
    'common-practice',
    'Pain at 0.6 times the best push',
  ]);
});
