import { type ChangeZone, type LegCourse, legOverVisits, type SetBlock, type VisitResult } from '@surae/analysis';
import { FEATURE_WORDS, FLOOR, PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  differenceWords,
  type PastView,
  type PastVisit,
  pastView,
} from '../../../apps/dashboard/src/result/past-view.ts';
import { identityDifferences } from '../../../packages/analysis/src/compare/test-identity.ts';
import { testedLeg } from '../../support/tested-leg.ts';

const words = { unit: 'repetitions', decimals: 0, isCount: true };

function courseOf(values: readonly number[], days: readonly number[] = values.map((_, i) => 28 * i)): LegCourse {
  return legOverVisits(
    values.map((value, i) => ({ day: days[i], leg: testedLeg('left', value, { testsBefore: i }) })),
    {},
  );
}

const shown = (result: VisitResult, u = 2.25): PastVisit => ({ result, when: `day ${result.day}`, u, words });

/** The view of visits that were all done alike. */
function viewOf(...values: readonly number[]): PastView {
  const course = courseOf(values);
  const visits = course.visits.map((visit) => shown(visit));
  return pastView({
    side: 'left',
    now: visits[visits.length - 1],
    alike: visits.slice(0, -1),
    unlike: [],
    course,
  });
}

test.each<readonly [number, number, string, ChangeZone]>([
  [19, 26, 'Left: 7 more than on day 0. A real change is likely.', 'likely-real'],
  [26, 19, 'Left: 7 fewer than on day 0. A real change is likely.', 'likely-real'],
  [19, 24, 'Left: 5 more than on day 0. A change is possible.', 'possible'],
  [19, 22, 'Left: 3 more than on day 0. Cannot be told from the usual wobble of the test.', 'cannot-tell'],
  [19, 19, 'Left: as many as on day 0. Cannot be told from the usual wobble of the test.', 'cannot-tell'],
])('%i, then %i: %s', (before, after, lead) => {
  expect(viewOf(before, after).lead).toBe(lead);
});

test('beside a change stand what is detectable, the error with its source, and that it need not be important', () => {
  const { lines } = viewOf(19, 24);
  expect(lines[0]).toBe('Detectable: 6.2 with 95 %, 4.1 with 80 %. Change: +5 (95 %: −1.2 to +11.2).');
  expect(lines[1]).toMatch(/^The error used: Hébert-Losier 2017/);
  expect(lines).toContain('A change that can be told from the usual wobble need not be an important one.');
});

test('three visits have a slope without an interval, five one with it, and the first visit is looked at too', () => {
  expect(viewOf(19, 22, 25).lines).toContainEqual(
    expect.stringMatching(/^Over 3 visits: \+0\.8 repetitions a week\. Under five/),
  );
  expect(viewOf(19, 22, 25).lines).toContainEqual(
    expect.stringMatching(/^Since the first such visit, day 0: 6 more\./),
  );
  expect(viewOf(15, 18, 21, 24, 27).lines).toContainEqual(
    expect.stringMatching(
      /^Over 5 visits: \+0\.8 repetitions a week \(95 %: \+0\.8 to \+0\.8\)\. The course has a direction\.$/,
    ),
  );
  expect(viewOf(15, 21, 14, 22, 16).lines).toContainEqual(
    expect.stringMatching(/Whether the course has a direction cannot be told\.$/),
  );
});

test('marks are there for two visits and more, with the interval from one test to the next', () => {
  expect(viewOf(19, 24).course?.points[1]).toMatchObject({ value: 24, low: 24 - 1.96 * 2.25, high: 24 + 1.96 * 2.25 });
  expect(viewOf(1, 24).course?.points[0].low).toBe(0);
});

test('no earlier test, none done alike, and a set that is not interpreted: each has its words and no marks', () => {
  const [before, now] = courseOf([19, 24]).visits.map((visit) => shown(visit));
  const plain = { side: 'left', now, alike: [], unlike: [], course: null } as const;
  expect(pastView(plain)).toMatchObject({ lead: 'Left: no earlier test of this leg.', course: null, apart: [] });
  const floor = {
    ...before,
    result: { ...before.result, identity: { ...before.result.identity, protocol: FLOOR.id } },
  };
  const unlike = pastView({ ...plain, unlike: [floor] });
  expect(unlike).toMatchObject({
    lead: 'Left: earlier tests were done in another way, and stand beside this one only.',
    course: null,
  });
  expect(unlike.apart).toEqual([
    {
      when: 'day 0',
      value: '19 repetitions',
      why: expect.stringMatching(/^protocol: Single-leg.*level floor then, Single-leg.*10 degree board now$/) as string,
    },
  ]);
  const ended: SetBlock[] = ['ended-for-pain'];
  const blocked = pastView({ ...plain, now: { ...now, result: { ...now.result, blocks: ended } }, alike: [before] });
  expect(blocked.lead).toMatch(/^Left: this set is not held against earlier ones\. A leg stopped for pain/);
  expect(blocked.course).toBeNull();
  expect(blocked.apart).toEqual([
    {
      when: 'day 0',
      value: '19 repetitions',
      why: 'nothing in how it was done; this test is not held against it: A leg stopped for pain: its result is what was tolerated.',
    },
  ]);
});

test('beside a test that is not interpreted each earlier one keeps the reason of its own, where it has one', () => {
  const [before, now] = courseOf([19, 24]).visits.map((visit) => shown(visit));
  const ended = { ...now, result: { ...now.result, blocks: ['ended-for-pain'] as SetBlock[] } };
  const floor = {
    ...before,
    result: { ...before.result, identity: { ...before.result.identity, protocol: FLOOR.id } },
  };
  const { apart } = pastView({ side: 'left', now: ended, alike: [before], unlike: [before, floor], course: null });
  expect(apart.map(({ why }) => why)).toEqual([
    expect.stringMatching(/^nothing in how it was done; this test is not held against it/),
    'another test followed on the same day',
    expect.stringMatching(/^protocol: /),
  ]);
});

test('an earlier set that shows something else than what the calf could do stands apart with its reason', () => {
  const [before, now] = courseOf([19, 24]).visits.map((visit) => shown(visit));
  const pain = { ...before, result: { ...before.result, blocks: ['ended-for-pain'] as SetBlock[] } };
  const { apart, lead } = pastView({ side: 'left', now, alike: [], unlike: [pain], course: null });
  expect(lead).toMatch(/earlier tests do not show what the calf could do/);
  expect(apart[0].why).toBe('A leg stopped for pain: its result is what was tolerated.');
});

test('every setting of a protocol of raises has a name, codes have words, and what is unknown is counted', () => {
  const same = { protocol: 'a', version: '1', placement: 'heel', origin: 'simulated' };
  const differ = identityDifferences(
    { ...same, 'parameter.surface': 'floor', 'parameter.leanMost': '10 deg', 'parameter.ofTomorrow': null },
    {
      ...same,
      placement: 'foot',
      'parameter.surface': 'incline10',
      'parameter.leanMost': '8 deg',
      'parameter.ofTomorrow': '1',
    },
  );
  expect(differenceWords(differ)).toEqual([
    'place of the sensor: string at the heel then, top of the foot now',
    'surface: level floor then, 10 degree board now',
    'most lean of the trunk: 10 deg then, 8 deg now',
    '1 further settings of the protocol',
  ]);
  const settings = PROTOCOLS.flatMap(({ parameters }) => Object.keys(parameters));
  expect(settings.filter((name) => !Object.hasOwn(FEATURE_WORDS, `parameter.${name}`))).toEqual([]);
  expect(PROTOCOLS.length).toBeGreaterThan(1);
});

test('a test that another one followed on its day says so', () => {
  const [before, now] = courseOf([19, 24]).visits.map((visit) => shown(visit));
  const { apart, lead } = pastView({ side: 'left', now, alike: [], unlike: [before], course: null });
  expect(lead).toBe('Left: the only other test is of the same day.');
  expect(apart[0].why).toBe('another test followed on the same day');
});

test('newtons beside newton metres stand apart, each in its own unit, and a force that is the same is as much', () => {
  const newtons = { unit: 'N', decimals: 0, isCount: false };
  const metres = { unit: 'N.m', decimals: 1, isCount: false };
  const [before, now] = courseOf([19, 19]).visits.map((visit) => shown({ ...visit, unit: 'N' }));
  const torque = { ...before, result: { ...before.result, unit: 'N.m' }, words: metres };
  const unlike = pastView({ side: 'left', now: { ...now, words: newtons }, alike: [], unlike: [torque], course: null });
  expect(unlike.lead).toMatch(/earlier tests were done in another way/);
  expect(unlike.apart).toEqual([{ when: 'day 0', value: '19.0 N.m', why: 'unit: newton metres then, newtons now' }]);
  const course = courseOf([19, 19]);
  const same = { side: 'left', now: { ...now, words: newtons }, alike: [before], unlike: [], course } as const;
  expect(pastView(same).lead).toMatch(/^Left: as much as on day 0\./);
});
