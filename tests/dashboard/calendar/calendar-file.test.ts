import type { CasebookVisit, Entry, PlanItem, Visit } from '@surae/casebook';
import { planAfter, planOf } from '@surae/casebook';
import { EXERCISES } from '@surae/shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calendarText } from '../../../apps/dashboard/src/calendar/calendar-file.ts';
import { isOn, planCalendar } from '../../../apps/dashboard/src/calendar/plan-events.ts';
import { rhythmOf } from '../../../apps/dashboard/src/calendar/plan-rhythm.ts';
import { handoutOf } from '../../../apps/dashboard/src/home/handout-of.ts';
import { HOME_HANDOUT } from '../../support/home-address.ts';
import { madeVisit } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';
import { readCalendar } from '../../support/read-calendar.ts';

const now = Date.UTC(2026, 2, 1, 8);
const dayAt = (n: number): string => new Date(Date.UTC(2026, 2, 1) + n * 86_400_000).toISOString().slice(0, 10);
const begun = dayAt(0);

function personWith(bodies: readonly PlanItem[], more: Partial<Visit> = {}, later?: Partial<Visit>) {
  const planItems = bodies.map(
    (body, at): Entry<PlanItem> => ({ id: `p${at}`, at: `${begun}T10:00:00Z`, author: 'RN', body }),
  );
  const visit: Visit = {
    ...madeVisit(),
    id: 'v1',
    begunAt: `${begun}T09:00:00+01:00`,
    plan: planItems.map(({ id }) => id),
    ...more,
  };
  const visits = [visit, ...(later === undefined ? [] : [{ ...madeVisit(), id: 'v2', ...later }])];
  return { visit, person: { visits: visits.map((one) => ({ visit: one }) as CasebookVisit), planItems } };
}

const term = fc.record({
  from: fc.integer({ min: 0, max: 20 }).map(dayAt),
  until: fc.option(fc.integer({ min: 0, max: 80 }).map(dayAt)),
});
const exercise = fc
  .tuple(
    fc.constantFrom(...EXERCISES.map(({ code }) => code)),
    term,
    fc.constantFrom(0.5, 1, 2, 3, 3.5, 4, 5, 6, 7, 14, null),
  )
  .map(([code, ends, perWeek]) => madeExercise(code, { ...ends, perWeek }));
const running = fc
  .tuple(fc.constantFrom(0, 1, 2, 3, 5, 7, null), fc.constantFrom(0, 600), term)
  .map(([daysBetween, mostS, ends]) => madeRunLimit({ daysBetween, mostS }, ends));
const line = fc.oneof(
  exercise,
  running,
  term.map((ends) => madePlanItem(ends)),
);

test('another reader expands the file to the days on which the plan of the day has the line and its rhythm falls', () => {
  fc.assert(
    fc.property(fc.array(line, { maxLength: 6 }), fc.integer({ min: 0, max: 12 }), (bodies, saved) => {
      const { visit, person } = personWith(bodies);
      const handout = handoutOf(visit, null, planAfter(person, visit));
      const today = dayAt(saved);
      const { events } = readCalendar(calendarText(planCalendar(handout, today, 0), begun, now));
      bodies.forEach((body, at) => {
        const rhythm = rhythmOf(handout.plan[at], handout.plan);
        const due = Array.from({ length: 110 }, (_, n) => dayAt(n)).filter(
          (day) =>
            day >= today &&
            (body.until !== null || day < dayAt(saved + 28)) &&
            rhythm !== null &&
            isOn(rhythm, begun, day) &&
            planOf(person, day)!.items.some(({ id }) => id === `p${at}`),
        );
        expect(events.find(({ uid }) => uid.endsWith(`-${at}`))?.days ?? []).toEqual(due);
      });
    }),
    { numRuns: 60 },
  );
});

test('impacts of any plan lie 48 h apart in the file', () => {
  const impacts = new Set(['quick-rebounds', 'one-leg-hops', 'forward-hops', 'two-leg-hops', 'rope-skipping']);
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (bodies) => {
      const { visit, person } = personWith(bodies);
      const handout = handoutOf(visit, null, planAfter(person, visit));
      const { events } = readCalendar(calendarText(planCalendar(handout, begun, 0), begun, now));
      const days = events
        .filter(({ uid }) => {
          const body = bodies[Number(uid.split('-').at(-1))];
          return body !== undefined && (body.of === 'running' || impacts.has(body.code ?? ''));
        })
        .flatMap((one) => one.days);
      const sorted = [...new Set(days)].sort().map((day) => Date.parse(day) / 86_400_000);
      for (const [k, day] of sorted.slice(1).entries()) expect(day - sorted[k]).toBeGreaterThanOrEqual(2);
    }),
    { numRuns: 60 },
  );
});

test('a plan that is held back, and one under a safety list that keeps from loading, has no event but the morning', () => {
  const bodies = [madeExercise('one-leg-raise'), madeRunLimit()];
  const safety = { ...madeVisit().safety!, ticked: ['line-of-a-newer-list'] };
  // the plan went on from an earlier visit, and this one ticked a line
  const { person } = personWith(bodies, {}, { begunAt: `${dayAt(7)}T09:00:00+01:00`, plan: [], safety });
  const visit = person.visits[1].visit;
  expect(planAfter(person, person.visits[0].visit)).toHaveLength(2);
  const handout = handoutOf(visit, null, planAfter(person, visit));
  const { events } = readCalendar(calendarText(planCalendar(handout, dayAt(7), 2), dayAt(7), now));
  expect(events.map(({ uid, status }) => [uid.split('-').at(-1), status])).toEqual([
    ['morning', null],
    ['0', 'CANCELLED'],
    ['1', 'CANCELLED'],
  ]);
});

test('the file is whole days without a zone, in short lines that end as the format asks, without a name, and replaces an older one', () => {
  const text = calendarText(planCalendar(HOME_HANDOUT, HOME_HANDOUT.day, 0), HOME_HANDOUT.day, now);
  const { method, events } = readCalendar(text);
  expect(method).toBe('PUBLISH');
  expect(events.every(({ isDay, sequence }) => isDay && sequence === 2196)).toBe(true);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  expect(text).not.toMatch(/TZID|VTIMEZONE|VALARM|ATTENDEE|ORGANIZER|Practice at the mill/);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const one of text.split('\r\n')) expect(Buffer.byteLength(one)).toBeLessThanOrEqual(75);
  expect(text).toMatch(/DTSTAMP:20260301T080000Z/);
  // DTSTART and UNTIL are of one kind
  expect(text.match(/UNTIL=\d{8}(?=[;\r])/g)).toHaveLength(events.length);
});

test('signs that the format uses for itself, and letters of any script, come back as they were', () => {
  const odd = 'a, b; c\\d\nüßé 𝒳 さ'.repeat(8);
  const calendar = planCalendar({ ...HOME_HANDOUT, plan: [] }, HOME_HANDOUT.day, 0);
  const [morning] = calendar.events;
  const text = calendarText({ ...calendar, events: [{ ...morning, title: odd, text: odd }] }, HOME_HANDOUT.day, now);
  expect(readCalendar(text).events[0]).toMatchObject({ summary: odd, description: odd });
});
