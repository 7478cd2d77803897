import { assess, defaultSettings } from '@surae/analysis';
import { type CasebookPerson, casebookOf, kinds, type PlanItem, planOf, readBodies, type Visit } from '@surae/casebook';
import { MemoryStore, type StoredDocument } from '@surae/storage';
import { addCourses } from '../../apps/dashboard/src/demo/courses/add-courses.ts';
import { COURSE_CAST, type CourseCast } from '../../apps/dashboard/src/demo/courses/course-cast.ts';

/** The day on which the courses end. */
export const now = new Date('2026-06-01T09:00:00Z');

export async function writeCourses(store: MemoryStore, cast: readonly CourseCast[] = COURSE_CAST): Promise<number[]> {
  const steps: number[] = [];
  await addCourses({
    store,
    now,
    cast,
    final: (trace, request) => Promise.resolve(assess(trace, request, defaultSettings())),
    told: (done) => steps.push(done),
  });
  return steps;
}

/** Every document of a store that has a kind, in its order. */
export async function documentsIn(store: MemoryStore): Promise<readonly StoredDocument[]> {
  const written = await Promise.all(kinds.map(({ kind }) => store.documents({ kind })));
  return written.flat().toSorted((one, other) => one.sequence - other.sequence);
}

/** The courses as they were written, and what of them cannot be read. */
export async function madeCourses(cast?: readonly CourseCast[]): Promise<{
  readonly store: MemoryStore;
  readonly steps: readonly number[];
  readonly problems: readonly unknown[];
  readonly people: readonly CasebookPerson[];
}> {
  const store = new MemoryStore();
  const steps = await writeCourses(store, cast);
  const documents = await documentsIn(store);
  return { store, steps, problems: readBodies(documents).problems, people: casebookOf(documents).people };
}

/** Somebody of the courses. */
export function oneOf(people: readonly CasebookPerson[], course: CourseCast['course']): CasebookPerson {
  const cast = COURSE_CAST.find((one) => one.course === course)!;
  return people.find(({ person }) => person.name === cast.person.name)!;
}

export const dayOf = (visit: Visit): string => visit.begunAt.slice(0, 10);

/** Visits of somebody, the oldest first. */
export function visitsOf({ visits }: CasebookPerson): readonly Visit[] {
  return visits.map((one) => one.visit).toSorted((one, other) => one.begunAt.localeCompare(other.begunAt));
}

/** Somebody as a page had them in a visit: nothing of later days, and no session of the day itself. */
export function asOf(person: CasebookPerson, visit: Visit): CasebookPerson {
  const day = dayOf(visit);
  return {
    ...person,
    visits: person.visits.filter((one) => one.visit.begunAt <= visit.begunAt),
    doneItems: person.doneItems.filter(({ body }) => body.on < day),
    morningChecks: person.morningChecks.filter(({ body }) => body.on <= day),
    runs: person.runs.filter(({ body }) => body.on < day),
  };
}

/** Lines that were kept in a visit; empty where the plan went on. */
export function keptIn({ planItems }: CasebookPerson, { plan }: Visit): readonly PlanItem[] {
  return (plan ?? []).flatMap((id) => planItems.find((one) => one.id === id)?.body ?? []);
}

/** Lines of the plan that holds on a day. */
export function planOn(person: CasebookPerson, day: string): readonly PlanItem[] {
  return (planOf(person, day)?.items ?? []).map(({ body }) => body);
}
