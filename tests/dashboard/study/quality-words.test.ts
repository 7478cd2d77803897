import { expect, test } from 'vitest';
import { boardRows } from '../../../apps/dashboard/src/study/quality-view.ts';
import { flagsTold, standsTold, trialName, trialWhose } from '../../../apps/dashboard/src/study/quality-words.ts';
import { FOLDER_STUDY, STUDY_ROWS, studyFolder } from '../../support/study-folder.ts';
import { sessionOf, shelvedStudy } from '../../support/study-session.ts';

const folder = studyFolder([
  STUDY_ROWS[0],
  { ...STUDY_ROWS[1], footwear: 'shoe' },
  { ...STUDY_ROWS[2], arm: '' },
  { ...STUDY_ROWS[3], file: 'gone.csv' },
  { ...STUDY_ROWS[4], file: 'again.csv' },
  STUDY_ROWS[4],
]);
folder.files.delete('gone.csv');
folder.files.set('again.csv', folder.text('walking-3.csv'));
const session = await sessionOf(await shelvedStudy(folder));
const rows = boardRows(session.rows);

test('a recording is called by its file and by whose it is, or by a number that tells nothing', () => {
  expect(trialName(rows[0], false)).toBe('cycling-8.csv');
  expect(trialName(rows[0], true)).toMatch(/^Recording [1-6]$/);
  expect(trialWhose(rows[0].row.trial, FOLDER_STUDY)).toBe('cycling 8, visit 1, left, cycling');
  expect(trialWhose(rows[2].row.trial, FOLDER_STUDY)).toBe('cycling 7, visit 1, left');
});

test('what is to be looked at is said in words, without a name while names are hidden', () => {
  const told = (at: number, isHidden: boolean): string[] => flagsTold(rows[at].row, isHidden, 'Recording 9');
  expect(told(0, false)).toEqual([]);
  expect(told(2, false)).toEqual(['not told: arm']);
  expect(told(3, false)).toEqual(['refused', 'gone.csv: there is no such file']);
  expect(told(3, true)).toEqual(['refused', 'Recording 9: there is no such file']);
  expect(told(5, false)).toEqual(['the same bytes as again.csv']);
  expect(told(5, true)).toEqual(['the same bytes as another recording']);
});

test('where it stands is said with the declared rule, or with who decided and why', async () => {
  expect(standsTold(rows[0].row, FOLDER_STUDY)).toEqual(['taken']);
  expect(standsTold(rows[1].row, FOLDER_STUDY)).toEqual(['left out', 'by a declared rule: tested in shoes']);
  expect(standsTold(rows[2].row, FOLDER_STUDY)).toEqual(['to decide']);
  const trial = 'cycling-7.csv';
  await session.decide({ trial, decision: 'exclude', reason: 'late', by: 'ada', at: null, why: 'group unknown' });
  expect(standsTold(session.rows[2], FOLDER_STUDY)).toEqual([
    'left out',
    'ada, the tester saw that the test was begun late: group unknown',
  ]);
});
