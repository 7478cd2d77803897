import { defaultSettings } from '@surae/analysis';
import { kinds } from '@surae/casebook';
import { type Extent, recordStudy } from '@surae/exchange';
import { expect, test } from 'vitest';
import { coursePerson } from '../../support/course-person.ts';
import { SAMPLE_BODIES } from '../../support/sample-bodies.ts';

const TOTAL = SAMPLE_BODIES['questionnaire-total'] as object;

test('totals leave with the days since the first visit, and not where single visits leave', async () => {
  const { store, book, personId, visitIds } = await coursePerson({ day: '2026-03-04', left: { count: 20 } });
  const first = await book.log.add(personId, { kind: 'questionnaire-total', body: TOTAL });
  const second = await book.log.add(personId, { kind: 'questionnaire-total', body: { ...TOTAL, on: '2026-03-31' } });
  await book.log.correct(second, { total: 71 }, 'misread');
  const gone = await book.log.add(personId, { kind: 'questionnaire-total', body: TOTAL });
  await book.log.takeOut(gone, 'twice');
  const documents = (await Promise.all(kinds.map(({ kind }) => store.documents({ kind })))).flat();
  const request = { settings: defaultSettings(), software: 'surae 0.1.0', read: null };
  const totals = async (extent: Extent) => (await recordStudy(documents, { ...request, extent })).totals;

  expect(await totals({ of: 'clinic' })).toEqual([
    {
      key: first,
      person: personId,
      at: '2026-03-02',
      dayOffset: -2,
      questionnaire: 'tendon-8',
      languageVersion: 'de-CH 2019',
      side: 'left',
      total: 64,
    },
    expect.objectContaining({ key: second, dayOffset: 27, total: 71 }),
  ]);
  expect(await totals({ of: 'person', personId })).toHaveLength(2);
  expect(await totals({ of: 'visits', visitIds })).toBeUndefined();
});

test('knee-to-wall tests leave with their best trial, and one that was left out with none', async () => {
  const { store, book, personId } = await coursePerson({ day: '2026-03-04', left: { count: 20 } });
  const body = SAMPLE_BODIES['knee-to-wall'] as object;
  await book.log.add(personId, { kind: 'knee-to-wall', body });
  await book.log.add(personId, { kind: 'knee-to-wall', body: { ...body, trials: [], skipped: 'sore-insertion' } });
  const documents = (await Promise.all(kinds.map(({ kind }) => store.documents({ kind })))).flat();
  const request = {
    settings: defaultSettings(),
    software: 'surae 0.1.0',
    read: null,
    extent: { of: 'clinic' },
  } as const;
  expect((await recordStudy(documents, request)).reaches).toMatchObject([
    { person: personId, at: '2026-03-02', dayOffset: -2, side: 'right', unit: 'cm', trials: [9.5, 11, 10.5], best: 11 },
    { trials: [], best: null, skipped: 'sore-insertion' },
  ]);
});
