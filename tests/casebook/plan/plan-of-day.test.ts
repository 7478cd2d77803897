import { type CasebookVisit, type Entry, holdsOn, type PlanItem, planAfter, planOf, type Visit } from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import { madeVisit } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem } from '../../support/plan-items.ts';

const entry = (id: string, changes: Partial<PlanItem> = {}): Entry<PlanItem> => ({
  id,
  at: '2026-03-01T10:00:00+01:00',
  author: 'RN',
  body: madePlanItem({ what: id, ...changes }),
});
const visitOf = (id: string, day: string, plan?: readonly string[], more: Partial<Visit> = {}): CasebookVisit =>
  ({
    visit: { ...madeVisit(), id, begunAt: `${day}T09:00:00+01:00`, ...(plan && { plan }), ...more },
  }) as CasebookVisit;

const planItems = [
  entry('a'),
  entry('b', { until: '2026-03-14' }),
  entry('c', { from: '2026-03-08' }),
  entry('d', { decision: 'declined' }),
  entry('e', { from: '2026-04-01' }),
  entry('f', { decision: 'changed', from: '2026-04-01' }),
  entry('loose'),
];
const first = visitOf('v1', '2026-03-01', ['a', 'b', 'c', 'd', 'gone']);
const person = { visits: [first], planItems };
const whats = (given: Parameters<typeof planOf>[0], day: string): readonly string[] | null =>
  planOf(given, day)?.items.map(({ id }) => id) ?? null;

test('a line holds on its first and its last day, and on none outside', () => {
  const item = madePlanItem({ from: '2026-03-02', until: '2026-03-04' });
  const days = ['2026-03-01', '2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05'];
  expect(days.map((day) => holdsOn(item, day))).toEqual([false, true, true, true, false]);
  expect(holdsOn({ ...item, until: null }, '2030-01-01')).toBe(true);
});

test('what was declined, taken back, not begun or is over is no part of it, nor what no visit confirmed', () => {
  expect(whats(person, '2026-02-28')).toBeNull();
  expect(whats(person, '2026-03-01')).toEqual(['a', 'b']);
  expect(whats(person, '2026-03-08')).toEqual(['a', 'b', 'c']);
  expect(whats(person, '2026-03-15')).toEqual(['a', 'c']);
  expect(planOf(person, '2026-03-15')).toMatchObject({ visitId: 'v1', since: '2026-03-01' });
});

test('a newer plan stands in place of the one before, from its day on', () => {
  const both = { visits: [first, visitOf('v2', '2026-04-01', ['e', 'f'])], planItems };
  expect(whats(both, '2026-03-31')).toEqual(['a', 'c']);
  expect(whats(both, '2026-04-01')).toEqual(['e', 'f']);
  // in whatever order the visits are handed over
  expect(whats({ ...both, visits: both.visits.toReversed() }, '2026-04-01')).toEqual(['e', 'f']);
});

test('a visit in which nothing changed, or that has not come to its plan, leaves it as it is', () => {
  const visits = [first, visitOf('v2', '2026-03-20', []), visitOf('v3', '2026-03-21')];
  expect(planOf({ visits, planItems }, '2026-03-22')).toMatchObject({ visitId: 'v1', since: '2026-03-01' });
});

test('a plan that was ended is none, until another one is kept', () => {
  const ended = visitOf('v2', '2026-03-20', [], { planEnded: true });
  expect(whats({ visits: [first, ended], planItems }, '2026-03-19')).toEqual(['a', 'c']);
  expect(whats({ visits: [first, ended], planItems }, '2026-03-20')).toBeNull();
  const again = visitOf('v3', '2026-04-02', ['f'], { planEnded: false });
  expect(whats({ visits: [first, ended, again], planItems }, '2026-04-02')).toEqual(['f']);
});

test('a plan of which all is over holds nothing, and is no other one', () => {
  const visits = [first, visitOf('v2', '2026-03-10', ['b'])];
  expect(whats({ visits, planItems }, '2026-03-15')).toEqual([]);
  expect(planOf(person, 'no day')).toBeNull();
});

test('one leaves a visit with what it kept, or with what went on though its lines were dated later than the visit', () => {
  const none = visitOf('v2', '2026-03-20', []);
  const given = { visits: [first, none], planItems };
  const after = (visits: readonly CasebookVisit[], at: number): readonly string[] =>
    planAfter({ ...given, visits }, visits[at].visit).map(({ id }) => id);
  expect(after([first], 0)).toEqual(['a', 'b', 'c']);
  // b was over on 14 March
  expect(after([first, none], 1)).toEqual(['a', 'c']);
  // what was kept in a visit on a later day than it was begun on
  const late = visitOf('v0', '2026-03-01', ['e']);
  expect(after([late, none], 1)).toEqual(['e']);
  const ended = visitOf('v2', '2026-03-20', [], { planEnded: true });
  expect(after([first, ended], 1)).toEqual([]);
  expect(after([first, ended, visitOf('v3', '2026-03-22', [])], 2)).toEqual([]);
  expect(after([first, visitOf('v2', '2026-03-20')], 1)).toEqual([]);
});

test('where nothing changed but a line was ticked since, what loads is not taken home', () => {
  const [safety, ticked] = [[], ['safety.fluoroquinolone']].map((list) => ({
    at: '',
    listVersion: SAFETY_LIST_VERSION,
    seenWhole: true,
    ticked: list,
    overridden: [],
  }));
  const items = [entry('words'), { ...entry('raise'), body: madeExercise('one-leg-raise') }];
  const kept = visitOf('v1', '2026-03-01', ['words', 'raise'], { safety });
  const after = (next: CasebookVisit): readonly string[] =>
    planAfter({ visits: [kept, next], planItems: items }, next.visit).map(({ id }) => id);
  expect(after(visitOf('v2', '2026-03-20', [], { safety }))).toEqual(['words', 'raise']);
  expect(after(visitOf('v2', '2026-03-20', [], { safety: ticked }))).toEqual(['words']);
  // and what was ticked after it was kept, in the same visit
  const same = visitOf('v1', '2026-03-01', ['words', 'raise'], { safety: ticked });
  expect(planAfter({ visits: [same], planItems: items }, same.visit).map(({ id }) => id)).toEqual(['words']);
});
