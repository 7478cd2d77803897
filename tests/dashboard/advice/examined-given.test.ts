import { noHistory, type Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { examinedGiven } from '../../../apps/dashboard/src/advice/examined-given.ts';
import { advisedVisit, inMarch, liveSet } from '../../support/advised-person.ts';

function right(changes: Partial<Visit> = {}, earlier: readonly Visit[] = []) {
  return examinedGiven(advisedVisit(changes), earlier, 'right');
}

function withLadder(answers: readonly (number | 'not-done' | 'could-not')[], sudden: boolean | null = null) {
  return right({ ladder: { left: { answers: [], sudden: null }, right: { answers, sudden } } });
}

test('what was told and tried in the visit is known, with the visit and its day', () => {
  const facts = right();
  const from = { day: inMarch(31), visitId: 'visit-now' };
  expect(facts['place']).toEqual({ value: 'mid-portion', from: { what: 'soreness', ...from } });
  expect(facts['irritability']).toEqual({ value: 'moderate', from: { what: 'history', ...from } });
  expect(facts['pain-double-raise']).toEqual({ value: 2, from: { what: 'ladder', ...from } });
  expect(facts['settles-overnight']).toMatchObject({ value: 'yes' });
  expect(facts['rest-pain']).toMatchObject({ value: 'none' });
  expect(facts['morning-stiffness']).toMatchObject({ value: 20, low: 10, high: 30 });
});

test('nothing is taken for none where nobody asked', () => {
  const facts = right({ sore: { left: null, right: null } });
  for (const code of ['place', 'irritability', 'settles-overnight', 'rest-pain']) {
    expect(facts[code]).toEqual({ missing: 'not-asked' });
  }
  const untold = right({ history: noHistory });
  expect(untold['irritability']).toEqual({ missing: 'not-graded' });
  for (const code of ['settles-overnight', 'morning-stiffness', 'rest-pain', 'days-since-flare']) {
    expect(untold[code], code).toEqual({ missing: 'not-asked' });
  }
});

test('a leg that is not sore has no irritability, and that is no low one', () => {
  const facts = examinedGiven(advisedVisit(), [], 'left');
  expect(facts['place']).toMatchObject({ value: 'no' });
  for (const code of ['irritability', 'settles-overnight', 'rest-pain']) {
    expect(facts[code]).toEqual({ missing: 'not-sore' });
  }
});

test('a rung that was not tried, left out, or could not be done has no pain', () => {
  const pain = (answers: Parameters<typeof withLadder>[0]) => withLadder(answers)['pain-double-raise'];
  expect(pain([])).toEqual({ missing: 'not-tried' });
  expect(pain([1])).toEqual({ missing: 'not-tried' });
  expect(pain([1, 'not-done'])).toEqual({ missing: 'left-out' });
  expect(pain([1, 'could-not'])).toEqual({ missing: 'could-not' });
  expect(pain([1, 0])).toMatchObject({ value: 0 });
});

test('that no raise was lost is known of a leg that did one, and of one that said so', () => {
  const lost = (answers: Parameters<typeof withLadder>[0], sudden: boolean | null = null) =>
    withLadder(answers, sudden)['sudden-loss'];
  expect(lost([1, 1, 1])).toMatchObject({ value: 'no' });
  expect(lost([1, 1])).toEqual({ missing: 'not-tried' });
  expect(lost([1, 1, 'could-not'])).toEqual({ missing: 'not-asked' });
  expect(lost([1, 1, 'could-not'], true)).toMatchObject({ value: 'yes' });
  expect(lost([1, 1, 'could-not'], false)).toMatchObject({ value: 'no' });
  expect(right({ ladder: undefined } as unknown as Partial<Visit>)['sudden-loss']).toEqual({ missing: 'not-tried' });
});

test('signs of a rupture are suspected after a pop in the test of this leg, and else not known', () => {
  const end = { reason: 'safety', painPeak: 8, exertion: 5, happened: 'pop' } as const;
  expect(right({ sets: [liveSet('right', 4, { end })] })['rupture-looked']).toMatchObject({ value: 'suspected' });
  expect(right({ sets: [liveSet('left', 4, { end })] })['rupture-looked']).toEqual({ missing: 'not-asked' });
});

test('a flare that an earlier visit tells of bounds the days since the last one', () => {
  const { history } = advisedVisit();
  const leg = { ...history!.legs.right, lastFlare: 'within-a-week' } as const;
  const told = { ...history!, legs: { ...history!.legs, right: leg } };
  expect(right({ history: told })['days-since-flare']).toMatchObject({ value: 0, low: 0, high: 7 });
  const earlier = { ...advisedVisit({ history: told }), begunAt: `${inMarch(1)}T09:00:00.000+01:00` };
  expect(right({ history: noHistory }, [earlier])['days-since-flare']).toMatchObject({ low: 0, high: 37 });
});
