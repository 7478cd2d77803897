import { EXERCISES } from '@surae/shared';
import { expect, test } from 'vitest';
import { proposedByOf } from '../../../../apps/dashboard/src/advice/proposed-by.ts';
import { coursePeople } from '../../../../apps/dashboard/src/demo/clinic.ts';
import { COURSE_CAST, courseDays, visitEvery } from '../../../../apps/dashboard/src/demo/courses/course-cast.ts';
import {
  dayOf,
  keptIn,
  madeCourses,
  now,
  oneOf,
  planOn,
  visitsOf,
  writeCourses,
} from '../../../support/made-courses.ts';

const { store, steps, problems, people } = await madeCourses();
const today = now.toISOString().slice(0, 10);

function daysAgo(days: number): string {
  return new Date(now.getTime() - days * 86_400_000).toISOString().slice(0, 10);
}

const rulesOf = (lines: ReturnType<typeof keptIn>): readonly string[] =>
  lines.flatMap(({ proposedBy }) => proposedByOf(proposedBy)?.rule ?? []);

test('whatever is written fits the schemas of the casebook, and everybody is invented', () => {
  expect(problems).toEqual([]);
  expect(steps).toEqual([0, 1, 2, 3, 4, 5, 6]);
  expect(people.map(({ person }) => [person.name, person.demo])).toEqual(
    COURSE_CAST.map(({ person }) => [person.name, true]),
  );
  expect(coursePeople).toBe(COURSE_CAST.length);
});

test('who is there already is not written again', async () => {
  const before = (await store.documents({ kind: 'visit' })).length;
  expect(await writeCourses(store)).toEqual([0]);
  expect((await store.documents({ kind: 'visit' })).length).toBe(before);
});

test('a course is the same for its seed', async () => {
  const [again] = (await madeCourses([COURSE_CAST[1]])).people;
  const first = oneOf(people, 'flare');
  const bodies = <Body>(entries: readonly { readonly body: Body }[]): readonly Body[] =>
    entries.map(({ body }) => body);
  expect(bodies(again.morningChecks)).toEqual(bodies(first.morningChecks));
  expect(bodies(again.planItems)).toEqual(bodies(first.planItems));
  expect(again.doneItems.map(({ body }) => [body.on, body.what, body.painDuring])).toEqual(
    first.doneItems.map(({ body }) => [body.on, body.what, body.painDuring]),
  );
});

test.each(COURSE_CAST.map(({ course }) => course))(
  '%s: twelve weeks of visits, the last one today and open at its plan, with both legs tested',
  (course) => {
    const visits = visitsOf(oneOf(people, course));
    const last = visits.at(-1)!;
    expect(dayOf(visits[0])).toBe(daysAgo(courseDays));
    expect(visits.length).toBeGreaterThan(courseDays / visitEvery);
    expect(visits.slice(0, -1).every(({ closed }) => closed)).toBe(true);
    expect([dayOf(last), last.closed, last.plan ?? null, last.resultSeen]).toEqual([today, false, null, true]);
    expect(last.sets.map(({ choice, report }) => [choice.origin, report !== null])).toEqual([
      ['simulated', true],
      ['simulated', true],
    ]);
  },
);

test('the flare: one sore morning, less at the next visit, a level down, and no day of nothing', () => {
  const person = oneOf(people, 'flare');
  const sore = person.morningChecks.filter(({ body }) => (body.pain.left ?? 0) >= 5).map(({ body }) => body.on);
  expect(sore).toEqual([daysAgo(courseDays - 31)]);
  const after = visitsOf(person).filter((visit) => dayOf(visit) > sore[0]);
  expect(rulesOf(keptIn(person, after[0]))).toContain('guidance.step-reduce');
  const dropped = after.findIndex((visit) => rulesOf(keptIn(person, visit)).includes('guidance.step-drop'));
  expect(dropped).toBeGreaterThan(0);
  expect(dropped).toBeLessThan(4);
  for (const visit of after) expect(planOn(person, dayOf(visit)).length).toBeGreaterThan(0);
});

test('both heel bones: no line ever below level or at a step, and what is done with both legs by the more careful one', () => {
  const person = oneOf(people, 'bothHeels');
  const lines = person.planItems.map(({ body }) => body);
  expect(lines.length).toBeGreaterThan(3);
  for (const line of lines) {
    expect(line.lowestFootDeg ?? 0, line.what).toBeGreaterThanOrEqual(0);
    expect(line.code).not.toBe('step-raise');
    const isTwo = EXERCISES.find(({ code }) => code === line.code)?.legs === 'two';
    // the left leg is the sorer one, from the first visit to the last
    if (isTwo) expect(proposedByOf(line.proposedBy)?.leg).toBe('left');
  }
});

test('who leaves most out is never proposed more on what was left out, and begins lower at the end', () => {
  const person = oneOf(people, 'few');
  const planned = visitsOf(person).filter((visit) => keptIn(person, visit).length > 0);
  expect(planned.length).toBeLessThan(5);
  expect(person.doneItems.length).toBeLessThan(0.5 * oneOf(people, 'steady').doneItems.length);
});

test('the runner: a goal day that is still to come, and no run over the limit of its day', () => {
  const person = oneOf(people, 'runner');
  expect((person.episodes[0]?.body.goalBy ?? '') > today).toBe(true);
  const runs = person.runs.map(({ body }) => body).filter(({ on }) => on >= daysAgo(courseDays));
  expect(runs.length).toBeGreaterThan(5);
  for (const run of runs) {
    const limit = planOn(person, run.on).find(({ of }) => of === 'running')?.run;
    expect(limit, run.on).toBeDefined();
    if (limit?.mostS != null) expect(run.durationS ?? 0).toBeLessThanOrEqual(limit.mostS);
    if (limit?.mostM != null) expect(run.distanceM ?? 0).toBeLessThanOrEqual(limit.mostM);
  }
});

test('a morning that was not told is no document, and never one of no pain', () => {
  const person = oneOf(people, 'silent');
  const told = new Set(person.morningChecks.map(({ body }) => body.on));
  expect(told.size).toBe(person.morningChecks.length);
  expect(told.size).toBeGreaterThan(20);
  expect(told.size).toBeLessThan(0.7 * courseDays);
  for (const { body } of person.morningChecks) expect(body.pain.left).not.toBeNull();
});

test('who is steady comes further than they began, one level at a time', () => {
  const person = oneOf(people, 'steady');
  const levels = visitsOf(person).flatMap((visit) => {
    const own = keptIn(person, visit).flatMap(({ proposedBy }) => proposedByOf(proposedBy) ?? []);
    return own.find(({ leg }) => leg === 'left')?.level ?? [];
  });
  expect(levels[0]).toBe('single');
  expect(levels.at(-1)).not.toBe('single');
  for (const level of levels) expect(['single', 'range', 'heavy']).toContain(level);
});
