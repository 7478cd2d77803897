import { choiceFacts, hopConditions, type Visit } from '@surae/casebook';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { conditionLines, conditionText } from '../../../apps/dashboard/src/journey/hop-lines.ts';
import { LOW, visitAtChoice, visitDone } from '../../support/choice-visit.ts';

const safety = { listVersion: '2', seenWhole: true, ticked: [], overridden: [], at: '2026-03-01T09:00:00.000+01:00' };
const visit = { ...visitAtChoice({ left: 'no', right: 'mid-portion' }, LOW), safety };

function lines(given: Visit, earlier: Parameters<typeof choiceFacts>[1] = []): string[][] {
  const facts = choiceFacts(given, earlier);
  return hopConditions(facts, ['left', 'right']).conditions.map((one) => conditionLines(one, facts));
}

test('a condition is told with its limit', () => {
  expect(conditionText('no-recent-flare')).toBe('No flare in the last 7 days');
  expect(conditionText('valid-raises')).toBe('At least 20 counted single-leg raises last time');
  expect(conditionText('pain-on-trial-hops')).toBe('Pain of at most 2 on three hops for trial');
});

test('what is not known says why', () => {
  expect(lines(visit)).toEqual([
    ['met: the list was gone through'],
    ['Left leg not known: no earlier test of raises tells', 'Right leg not known: no earlier test of raises tells'],
    ['Left leg not known: not tried today', 'Right leg not known: not tried today'],
    ['Left leg not known: not tried today', 'Right leg not known: not tried today'],
    ['Left leg not known: not asked', 'Right leg not known: not asked'],
  ]);
});

test('what is known says by what', () => {
  const { legs, about } = visit.history!;
  const history = {
    legs: { left: { ...legs.left, lastFlare: 'longer-ago-or-never' as const }, right: legs.right },
    about,
  };
  const ladder = {
    left: { answers: [0, 0, 2, 0, 3], sudden: null },
    right: { answers: [], sudden: null },
  } as const;
  const before = visitDone(FLOOR, 25, 19);
  const flare = { ...legs.right, irritability: { ...legs.right.irritability, flare: 'yes' as const } };
  const earlier = {
    ...before,
    begunAt: '2026-02-26T09:00:00.000+01:00',
    sore: visit.sore,
    history: { legs: { left: legs.left, right: flare }, about },
  };
  const ticked = { ...safety, ticked: ['safety.rupture'] };
  expect(lines({ ...visit, history, ladder, safety: ticked }, [earlier])).toEqual([
    ['not met: a line was ticked'],
    ['Left leg met: 25, from 25 to 25', 'Right leg not met: 19, from 19 to 19'],
    ['Left leg met: pain 2', 'Right leg not known: not tried today'],
    ['Left leg not met: pain 3', 'Right leg not known: not tried today'],
    ['Left leg met: last flare longer ago, or never', 'Right leg not met: the visit of 26 Feb 2026 tells of a flare'],
  ]);
});
