import type { VisitResult } from '@surae/analysis';
import type { Visit } from '@surae/casebook';
import { dayNumber, type LegPast, pastOf, takenAlike } from '@surae/casebook';
import { expect, test } from 'vitest';
import { madeVisit } from '../../support/made-visit.ts';

/** A leg that did so many on a day, without anything else that is known of it. */
interface Done {
  readonly day: string;
  readonly value: number;
  readonly changes?: Partial<VisitResult>;
}

function resultOf({ value, changes }: Done, day: number | null): VisitResult {
  const identity = { protocol: 'a', version: '1', placement: 'platform' };
  const frame = { side: 'left', unit: 'N', convention: 'net', blocks: [], testsBefore: 1, inFlare: false } as const;
  return { ...frame, day, value, identity, ...changes };
}

/** The last of these over those before it. */
function past(...done: readonly Done[]): LegPast<Done> | undefined {
  const visits = done.map(
    ({ day }, at): Visit => ({ ...madeVisit(), id: String(at), begunAt: `${day}T09:00:00.000+01:00` }),
  );
  const [now, ...before] = [...visits].reverse();
  return pastOf(now, before.reverse(), {
    legOf: ({ id }) => done[Number(id)],
    over: (legs) => ({ visits: legs.map(({ day, leg }) => resultOf(leg, day)), changes: [], trend: null }),
  });
}

const values = (legs: LegPast<Done>['alike'] | undefined): readonly number[] | undefined =>
  legs?.map(({ leg }) => leg.value);

test('of two visits on one day the later one counts, and one of today is no earlier visit', () => {
  const found = past(
    { day: '2026-03-02', value: 17 },
    { day: '2026-03-02', value: 19 },
    { day: '2026-04-27', value: 24 },
    { day: '2026-04-27', value: 25 },
  );
  expect(values(found?.alike)).toEqual([19]);
  expect(values(found?.unlike)).toEqual([17, 24]);
  expect(found?.course?.visits.map(({ value }) => value)).toEqual([19, 25]);
});

test('another unit, another place or a reason against it keeps a result apart, and no course is made of it alone', () => {
  const identity = { protocol: 'a', version: '1', placement: 'inline' };
  for (const changes of [{ unit: 'N.m' }, { identity }, { blocks: ['ended-for-pain'] }] as const) {
    const found = past({ day: '2026-03-02', value: 19, changes }, { day: '2026-04-27', value: 24 });
    expect([values(found?.alike), values(found?.unlike), found?.course]).toEqual([[], [19], null]);
  }
  const one = resultOf({ day: '', value: 1 }, 0);
  expect([takenAlike(one, one), takenAlike(one, { ...one, unit: 'N.m' })]).toEqual([true, false]);
});

test('a result that is not interpreted has no course, whatever came before', () => {
  const blocks = ['no-maximum'] as const;
  const found = past({ day: '2026-03-02', value: 19 }, { day: '2026-04-27', value: 24, changes: { blocks } });
  expect([values(found?.alike), found?.course]).toEqual([[19], null]);
});

test('a leg without a result has no past', () => {
  const none = pastOf(madeVisit(), [], { legOf: () => null, over: () => ({ visits: [], changes: [], trend: null }) });
  expect(none).toBeUndefined();
});

test('days are those of the clock of the place', () => {
  expect(dayNumber('2026-03-02T00:10:00.000+13:00')).toBe(dayNumber('2026-03-02T23:50:00.000-08:00'));
  expect(dayNumber('2026-03-03T09:00:00.000+01:00')! - dayNumber('2026-03-02T09:00:00.000+01:00')!).toBe(1);
  expect(dayNumber('some day')).toBeNull();
});
