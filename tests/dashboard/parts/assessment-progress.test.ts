import { RESULT_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { nothing } from 'lit';
import { expect, test } from 'vitest';
import { assessmentProgress } from '../../../apps/dashboard/src/parts/assessment-progress.ts';
import { AssessmentError } from '../../../apps/dashboard/src/result/assessment.ts';
import { Assessments } from '../../../apps/dashboard/src/result/assessments.ts';

const set = { id: 'a', report: null, choice: { side: 'left' } } as const;
const page = { requestUpdate: () => {} };

test('nothing before it is asked for, then that it runs, then why it failed with a button', async () => {
  const all = new Assessments<typeof set>(page, () => Promise.reject(new AssessmentError('bytes-missing', 'gone')));
  expect(assessmentProgress(all, set)).toBe(nothing);
  const done = all.run(set);
  const leg = SUMMARY_WORDS.left.text;
  expect(assessmentProgress(all, set)).toMatchObject({ values: [RESULT_WORDS.assessing.text.replace('{leg}', leg)] });
  await done;
  const shown = assessmentProgress(all, set);
  expect(JSON.stringify(shown)).toContain(leg);
  expect(shown).toMatchObject({ values: [expect.any(String), expect.any(Function), RESULT_WORDS['try-again'].text] });
});
