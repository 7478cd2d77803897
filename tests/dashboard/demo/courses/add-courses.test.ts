import { planOf } from '@surae/casebook';
import { EXERCISES, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { adviceFor } from '../../../../apps/dashboard/src/advice/advice-cards.ts';
import { proposedByOf } from '../../../../apps/dashboard/src/advice/proposed-by.ts';
import { coursePeople } from '../../../../apps/dashboard/src/demo/clinic.ts';
import { COURSE_CAST, courseDays, visitEvery } from '../../../../apps/dashboard/src/demo/courses/course-cast.ts';
import {
  asOf,
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
  expect(steps).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
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

test('not one raise: the signs of a rupture are looked for before anything begins, then holds on two legs, and no raise on that leg alone', () => {
  const person = oneOf(people, 'noRaise');
  const [first, ...later] = visitsOf(person);
  expect(first.ladder?.left.answers).toContain('could-not');
  expect(first.sets.map(({ choice }) => choice.side)).toEqual(['right']);
  // until somebody looked, nothing is proposed and the list of a rupture stands first
  const untold = adviceFor(asOf(person, first), { ...first, factsTold: [] }, dayOf(first), GUIDANCE_RULES, false);
  expect([untold.cards, untold.nextSteps.length]).toEqual([[], 1]);
  expect((first.factsTold ?? []).map(({ fact, leg, answer }) => [fact, leg, answer])).toContainEqual([
    'rupture-looked',
    'left',
    'clear',
  ]);
  const own = keptIn(person, first).filter(({ side }) => side !== 'right');
  expect(own.map(({ code }) => EXERCISES.find((one) => one.code === code)?.legs)).toEqual(['two', 'two']);
  expect(own.map(({ proposedBy }) => proposedByOf(proposedBy)?.level)).toEqual(['calm', 'calm']);
  // it goes on: the leg is loaded by itself, on the way down, once it can do a raise
  const levels = later.flatMap((visit) =>
    keptIn(person, visit).flatMap(({ side, proposedBy }) =>
      side === 'left' ? (proposedByOf(proposedBy)?.level ?? []) : [],
    ),
  );
  expect(new Set(levels)).toEqual(new Set(['learn']));
});

test('tablets: nothing is planned, tested or done while the line stands, and what comes after three weeks begins a level lower', () => {
  const person = oneOf(people, 'tablets');
  const [from, until] = [daysAgo(courseDays - 17), daysAgo(courseDays - 42)];
  const locked = visitsOf(person).filter(({ safety }) => safety!.ticked.includes('safety.fluoroquinolone'));
  expect([dayOf(locked[0]), locked.length]).toEqual([from, 4]);
  for (const visit of locked) expect([visit.sets, keptIn(person, visit)]).toEqual([[], []]);
  expect(person.doneItems.filter(({ body }) => body.on >= from && body.on < until)).toEqual([]);
  expect(person.doneItems.filter(({ body }) => body.on >= until).length).toBeGreaterThan(20);
  const held = planOf(person, daysAgo(courseDays - 30));
  expect([held?.items.length, held?.held.length]).toEqual([0, 3]);
  const after = visitsOf(person).find((visit) => dayOf(visit) === until)!;
  expect(new Set(rulesOf(keptIn(person, after)))).toEqual(new Set(['guidance.step-restart-lower']));
  expect(person.notes.map(({ body }) => body.on)).toEqual([from, until]);
});
