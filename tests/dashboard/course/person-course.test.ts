import { expect, test } from 'vitest';
import { personCourse } from '../../../apps/dashboard/src/course/person-course.ts';
import { coursePerson } from '../../support/course-person.ts';
import { judged } from '../../support/detected-set.ts';

const now = '2026-03-20T09:00:00Z';
const four = judged({ heightsM: [0.1, 0.1, 0.1, 0.1] });

test('a set on the line of time counts by what a person saw in it, and the report stays beside it', async () => {
  const { store, book, personId, visitIds } = await coursePerson({
    day: '2026-03-02',
    left: { count: 4, changes: four },
  });
  const valid = async (): Promise<readonly unknown[]> => {
    const { person } = personCourse(personId, await book.log.documents(personId), [], now)!;
    const [set] = person.visits[0].visit.sets;
    return [set.report!.count.valid, set.automatic?.count.valid];
  };
  expect(await valid()).toEqual([4, undefined]);
  const [begun] = await store.documents({ kind: 'set-begun', about: visitIds[0] });
  const body = { setId: begun.id, repetition: 3, criterion: null, verdict: 'no', why: null };
  await store.add({ kind: 'verdict-by-hand', schema: 1, about: visitIds[0], author: 'K', at: now, body });
  expect(await valid()).toEqual([3, 4]);
});

test('what the person asks for today stands with it, and nobody has no course', async () => {
  const { book, personId } = await coursePerson({ day: '2026-03-02', left: { count: 20 }, open: true });
  const documents = await book.log.documents(personId);
  const { due } = personCourse(personId, documents, [], now)!;
  expect(due.map(({ kind }) => kind)).toEqual(['visit-open', 'retest-unknown', 'mass-missing', 'lever-missing']);
  expect(personCourse('nobody', documents, [], now)).toBeNull();
});
