import { bodyVersion, kindOf } from '@surae/casebook';
import { expect, test } from 'vitest';
import { courseLines, firstDayOf, loggedOf } from '../../../apps/dashboard/src/course/course-line.ts';
import { coursePerson } from '../../support/course-person.ts';
import { SAMPLE_BODIES } from '../../support/sample-bodies.ts';
import { legTold, MODERATE } from '../../support/told-visit.ts';

const flare = { legs: { left: legTold('none'), right: legTold('none', { ...MODERATE, flare: 'yes' }) }, about: [] };

test('everything of a person stands on one line of time, the newest day first, each kind by its own day', async () => {
  const { book, personId, read } = await coursePerson(
    { day: '2026-03-02', left: { count: 20 }, right: { count: 18 }, history: flare },
    { day: '2026-03-30', left: { count: 22 }, pushes: { right: { netN: 800 } } },
  );
  for (const kind of [
    'note',
    'run',
    'on-feet',
    'done-item',
    'morning-check',
    'questionnaire-total',
    'knee-to-wall',
    'plan-item',
    'episode',
  ]) {
    await book.hand.add({ kind, schema: bodyVersion(kindOf(kind)!), about: personId, body: SAMPLE_BODIES[kind] });
  }
  const lines = courseLines(await read());
  expect(lines.map(({ day, what, side }) => [day.slice(5), what, side])).toEqual([
    // a complaint whose day is not known stands on the day on which it was written down
    ['06-01', 'episode', null],
    ['03-30', 'test', 'right'],
    ['03-30', 'test', 'left'],
    ['03-06', 'note', null],
    ['03-05', 'on-feet', null],
    ['03-05', 'run', null],
    ['03-04', 'morning-check', null],
    ['03-03', 'done-item', null],
    ['03-02', 'planned', null],
    ['03-02', 'knee-to-wall', 'right'],
    ['03-02', 'questionnaire-total', 'left'],
    ['03-02', 'test', 'right'],
    ['03-02', 'test', 'left'],
    ['03-02', 'flare', 'right'],
  ]);
  expect(lines.every(({ sentences }) => sentences.join('').length > 3)).toBe(true);
});

test('a proposal that was declined stands on the day of its visit, and one that was taken back does not', async () => {
  const { book, personId, read } = await coursePerson({ day: '2026-03-02', open: true, left: { count: 20 } });
  const visitId = (await book.visitsOf(personId))[0].id;
  const proposedBy = 'guidance.start-single/1/common-practice/left/single';
  const planned = async () => courseLines(await read()).filter(({ what }) => what === 'planned');
  await book.record(visitId, { kind: 'proposal-declined', proposedBy, reason: 'too-much' });
  expect(await planned()).toMatchObject([
    {
      day: '2026-03-02',
      visitId,
      sentences: [expect.stringMatching(/guidance\.start-single.*left.*too much for now/)],
    },
  ]);
  await book.record(visitId, { kind: 'proposal-declined', proposedBy, reason: null });
  expect(await planned()).toEqual([]);
});

test('what was written down by hand can be corrected, what was tested leads to its visit', async () => {
  const { book, personId, visitIds, read } = await coursePerson({ day: '2026-03-02', left: { count: 20 } });
  const id = await book.log.add(personId, { kind: 'note', body: SAMPLE_BODIES['note'] as object });
  const person = await read();
  const [note, set] = courseLines(person);
  expect([note.logged?.id, note.visitId]).toEqual([id, null]);
  expect([set.logged, set.visitId]).toEqual([null, visitIds[0]]);
  expect(loggedOf(person).map(({ kind }) => kind)).toEqual(['note']);
  expect(firstDayOf(person)).toBe('2026-03-02');
  expect(firstDayOf({ visits: [] })).toBeNull();
});
