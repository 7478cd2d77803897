import { expect, test } from 'vitest';
import { openedVisit } from '../../../apps/dashboard/src/journey/opened-visit.ts';
import { made } from '../../support/legs-visit.ts';

test('a visit is read with its past, and that its person was opened is written', async () => {
  const read = await made({ day: '2026-03-02', left: { count: 27 } }, { day: '2026-04-27', left: { count: 27 } });
  const opened: string[] = [];
  const audit = { personOpened: (id: string) => Promise.resolve(void opened.push(id)) };
  const book = {
    visitAndPast: (id: string) => Promise.resolve(id === 'gone' ? undefined : read),
    ownErrors: () => Promise.resolve([]),
  };
  const given = await openedVisit(book, audit, read.visit.id);
  expect(given).toMatchObject({ visit: { id: read.visit.id }, own: { tests: {}, ratios: {} } });
  expect(given?.earlier).toHaveLength(1);
  expect(opened).toEqual([read.visit.personId]);
  expect(await openedVisit(book, audit, 'gone')).toBeUndefined();
  expect(opened).toHaveLength(1);
});
