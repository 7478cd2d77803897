import { expect, test } from 'vitest';
import { soreAtInsertion } from '../../../apps/dashboard/src/course/sore-insertion.ts';
import { coursePerson } from '../../support/course-person.ts';
import { SAMPLE_BODIES } from '../../support/sample-bodies.ts';

test('a leg is minded where a complaint that is not over or the newest visit says so', async () => {
  const { book, personId, read } = await coursePerson(
    { day: '2026-03-02', left: { count: 20 }, sore: { left: 'insertion', right: 'no' } },
    { day: '2026-03-30', left: { count: 20 }, sore: { left: 'no', right: 'both-places' } },
  );
  expect(soreAtInsertion(await read())).toEqual(['right']);
  const id = await book.log.add(personId, { kind: 'episode', body: SAMPLE_BODIES['episode'] as object });
  expect(soreAtInsertion(await read())).toEqual(['left', 'right']);
  await book.log.correct(id, { over: '2026-05' }, 'over');
  expect(soreAtInsertion(await read())).toEqual(['right']);
  expect(soreAtInsertion({ episodes: [], visits: [] })).toEqual([]);
});
