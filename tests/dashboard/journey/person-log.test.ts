import { expect, test } from 'vitest';
import { coursePerson } from '../../support/course-person.ts';

const morning = (left: number) => ({
  kind: 'morning-check',
  body: { on: '2026-03-05', pain: { left, right: 0 }, stiffnessMin: 5 },
});

test('what is written down is read again, corrected and taken back, and every document stays in the store', async () => {
  const { store, book, personId, read } = await coursePerson({ day: '2026-03-02', left: { count: 20 } });
  const first = await book.log.add(personId, morning(3));
  const second = await book.log.add(personId, morning(4));
  expect((await read()).morningChecks.map(({ body }) => body.pain.left)).toEqual([3, 4]);
  await book.log.correct(second, { pain: { left: 5, right: 1 } }, 'misheard');
  await book.log.takeOut(first, 'written twice');
  const { morningChecks, visits } = await read();
  expect(morningChecks.map(({ body }) => [body.pain, body.stiffnessMin])).toEqual([[{ left: 5, right: 1 }, 5]]);
  expect(visits.map(({ visit }) => visit.sets.length)).toEqual([1]);
  const kept = await store.documents({ whose: personId, kind: ['morning-check', 'amendment', 'removal'] });
  expect(kept.map(({ kind }) => kind)).toEqual(['morning-check', 'morning-check', 'amendment', 'removal']);
  expect(kept[1].body).toEqual(morning(4).body);
});

test('a correction is undone by another one', async () => {
  const { book, personId, read } = await coursePerson({ day: '2026-03-02', left: { count: 20 } });
  const id = await book.log.add(personId, morning(3));
  await book.log.correct(id, { on: '2026-03-06' }, 'of another day');
  await book.log.correct(id, { on: '2026-03-05' }, 'no, it was that day');
  expect((await read()).morningChecks.map(({ body }) => body)).toEqual([morning(3).body]);
});
