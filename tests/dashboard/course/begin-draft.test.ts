import { expect, test } from 'vitest';
import { beginDraft } from '../../../apps/dashboard/src/course/begin-draft.ts';
import { emptyDraft } from '../../../apps/dashboard/src/course/log-draft.ts';
import { logKinds } from '../../../apps/dashboard/src/course/log-entry.ts';
import { coursePerson } from '../../support/course-person.ts';
import { SAMPLE_BODIES } from '../../support/sample-bodies.ts';

const on = '2026-03-09';

test('what is new begins empty, but a total with the questionnaire, version and leg of the last one', async () => {
  const { book, personId, read } = await coursePerson({ day: '2026-03-02', left: { count: 20 } });
  const before = await read();
  for (const kind of logKinds) expect(beginDraft(kind, on, before), kind).toEqual(emptyDraft(kind, on));
  const body = SAMPLE_BODIES['questionnaire-total'] as object;
  await book.log.add(personId, { kind: 'questionnaire-total', body });
  const after = await read();
  expect(beginDraft('questionnaire-total', on, after).total).toEqual({
    questionnaire: 'tendon-8',
    languageVersion: 'de-CH 2019',
    side: 'left',
    total: '',
  });
  expect(beginDraft('run', on, after)).toEqual(emptyDraft('run', on));
});
