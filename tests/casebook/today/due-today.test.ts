import {
  asksToday,
  type CaseloadEntry,
  type Due,
  dueToday,
  type MorningLine,
  type MorningOfLeg,
} from '@surae/casebook';
import { describe, expect, test } from 'vitest';
import { dayAfter, episodeLine, listedPerson, testedOn } from '../../support/listed-person.ts';

const kinds = (entry: CaseloadEntry, today = 1): readonly Due['kind'][] =>
  dueToday(entry, dayAfter(today)).map(({ kind }) => kind);

test('nothing is asked of somebody of whom everything is known', () => {
  expect(kinds(listedPerson())).toEqual([]);
});

test('a visit that something was answered in stays open until it is finished', () => {
  const begun = testedOn(0, { closed: false });
  expect(dueToday(listedPerson({ visits: [begun], facts: { episodes: [episodeLine] } }), dayAfter(1))).toEqual([
    { kind: 'visit-open', begunAt: begun.begunAt },
  ]);
  expect(kinds(listedPerson({ visits: [testedOn(0, { closed: false, answered: false, tested: false })] }))).toEqual([]);
});

describe('the body', () => {
  test('a mass is asked again when it is over 90 days old, and not at 90', () => {
    expect(kinds(listedPerson(), 90)).toEqual([]);
    expect(dueToday(listedPerson(), dayAfter(91))).toEqual([{ kind: 'mass-old', days: 91 }]);
  });

  test('a mass that changed is asked when it changed by more than 5 percent, up or down, and not at 5', () => {
    const changed = (before: number, now: number): readonly Due['kind'][] =>
      kinds(listedPerson({ person: { bodyMassKg: now }, facts: { massBefore: before } }));
    expect(changed(80, 84)).toEqual([]);
    expect(changed(80, 84.1)).toEqual(['mass-changed']);
    expect(changed(80, 76)).toEqual([]);
    expect(changed(80, 75.9)).toEqual(['mass-changed']);
    // one that is too old is asked once
    expect(kinds(listedPerson({ person: { bodyMassKg: 90 }, facts: { massBefore: 60 } }), 91)).toEqual(['mass-old']);
  });

  test('what is missing of it is asked, and a day that cannot be read is no fresh one', () => {
    expect(kinds(listedPerson({ person: { bodyMassKg: null, heelLeverM: null }, facts: { massAt: null } }))).toEqual([
      'mass-missing',
      'lever-missing',
    ]);
    expect(dueToday(listedPerson({ facts: { massAt: null } }), dayAfter(1))).toEqual([
      { kind: 'mass-old', days: null },
    ]);
    expect(dueToday(listedPerson(), '')).toEqual([{ kind: 'mass-old', days: null }]);
  });
});

describe('a flare', () => {
  const none: MorningOfLeg = { pain: null, usual: null };
  const morning = (day: number, left: MorningOfLeg, right = none): MorningLine => ({
    on: dayAfter(day).slice(0, 10),
    legs: { left, right },
  });
  const flared = (line: MorningLine, changes: Parameters<typeof listedPerson>[0] = {}): readonly Due[] =>
    dueToday(listedPerson({ ...changes, facts: { ...changes.facts, morning: line } }), dayAfter(9));

  test('is pain in the morning more than 2 over the usual, and not 2', () => {
    expect(flared(morning(9, { pain: 5, usual: 3 }))).toEqual([]);
    expect(flared(morning(9, { pain: 5, usual: 2.5 }))).toMatchObject([
      { kind: 'morning-rose', side: 'left', pain: 5, usual: 2.5 },
    ]);
    expect(flared(morning(9, none, { pain: 6, usual: 3 }))).toMatchObject([{ kind: 'morning-rose', side: 'right' }]);
  });

  test('without a usual level it is not known, but where no level could make it one', () => {
    expect(flared(morning(9, { pain: 3, usual: null }))).toMatchObject([{ kind: 'morning-unknown', pain: 3 }]);
    expect(flared(morning(9, { pain: 2, usual: null }))).toEqual([]);
    expect(flared(morning(9, none))).toEqual([]);
  });

  test('of a morning stands until a visit of that day or later', () => {
    const rose = morning(5, { pain: 8, usual: 1 });
    const seen = (day: number, changes = {}): readonly Due['kind'][] =>
      flared(rose, { visits: [testedOn(day, { tested: false, ...changes })] }).map(({ kind }) => kind);
    expect(seen(4)).toEqual(['morning-rose']);
    expect(seen(5)).toEqual([]);
    expect(seen(6, { closed: true, answered: false })).toEqual(['morning-rose']);
  });

  test('told in the newest visit stands until a later morning tells otherwise of that leg', () => {
    const flareTold = { visitId: 'v3', begunAt: dayAfter(3), sides: ['left', 'right'] as const };
    const changes = { visits: [testedOn(3, { tested: false })], facts: { flareTold } };
    const sides = (line: MorningLine): unknown =>
      flared(line, changes).map((one) => ('sides' in one ? one.sides : one.kind));
    expect(sides(morning(4, { pain: 1, usual: 1 }, { pain: 1, usual: 1 }))).toEqual([]);
    expect(sides(morning(4, { pain: 1, usual: 1 }))).toEqual([['right']]);
    expect(sides(morning(4, { pain: 4, usual: null }))).toEqual([['left', 'right'], 'morning-unknown']);
    expect(sides(morning(3, { pain: 1, usual: 1 }, { pain: 1, usual: 1 }))).toEqual([['left', 'right']]);
  });
});

describe('re-tests', () => {
  test('without an episode nothing can be told of them, once somebody was tested', () => {
    expect(kinds(listedPerson({ visits: [testedOn(0)] }))).toEqual(['retest-unknown']);
    expect(kinds(listedPerson({ visits: [testedOn(0, { tested: false })] }))).toEqual([]);
  });

  test('of several episodes one that is due counts, then one of which nothing can be told', () => {
    const old = { ...episodeLine, id: 'o', began: '2026-01-01' };
    const unread = { ...episodeLine, began: null, at: '' };
    const fresh = { ...episodeLine, id: 'f', began: '2026-03-20' };
    const told = (...episodes: readonly (typeof episodeLine)[]): readonly Due['kind'][] =>
      kinds(listedPerson({ visits: [testedOn(0)], facts: { episodes } }), 30);
    expect(told(fresh)).toEqual(['never-tested']);
    expect(told(fresh, old)).toEqual(['due']);
    expect(told(unread, old)).toEqual(['due']);
    expect(told(fresh, unread)).toEqual(['retest-unknown']);
  });
});

test('what comes first: an open visit, a flare, a re-test, the body', () => {
  const entry = listedPerson({
    person: { heelLeverM: null },
    visits: [testedOn(10, { closed: false })],
    facts: {
      episodes: [episodeLine],
      flareTold: { visitId: 'v10', begunAt: dayAfter(10), sides: ['right'] },
    },
  });
  expect(kinds(entry, 100)).toEqual(['visit-open', 'flare-told', 'due', 'mass-old', 'lever-missing']);
});

test('above the rest stands whoever something is due of; a missing body only in an episode', () => {
  const asks = (entry: CaseloadEntry): boolean => asksToday(dueToday(entry, dayAfter(1)), entry);
  const bare = { bodyMassKg: null, heelLeverM: null };
  expect(asks(listedPerson())).toBe(false);
  expect(asks(listedPerson({ person: bare }))).toBe(false);
  expect(asks(listedPerson({ person: bare, facts: { episodes: [episodeLine] } }))).toBe(true);
  expect(asks(listedPerson({ facts: { episodes: [episodeLine] } }))).toBe(false);
  expect(asks(listedPerson({ visits: [testedOn(0)] }))).toBe(false);
  expect(asks(listedPerson({ visits: [testedOn(0, { closed: false })] }))).toBe(true);
});
