import { keyHash } from '@surae/study';
import { expect, test } from 'vitest';
import {
  type BoardAsk,
  boardPage,
  boardRows,
  hidesNames,
  PAGE,
} from '../../../apps/dashboard/src/study/quality-view.ts';
import { FOLDER_STUDY, STUDY_ROWS, studyFolder } from '../../support/study-folder.ts';
import { plainTrials, sessionOf, shelvedStudy } from '../../support/study-session.ts';

const trials = plainTrials();
const ALL: BoardAsk = { shown: 'all', order: 'manifest', search: '', page: 0 };
const session = await sessionOf(await shelvedStudy(studyFolder(), trials));

test('rows are found by name, person and group, and stand as in the manifest or by name', () => {
  const rows = boardRows(session.rows);
  const names = (ask: Partial<BoardAsk>): string[] =>
    boardPage(rows, { ...ALL, ...ask }, FOLDER_STUDY, false).rows.map(({ row }) => row.trial.trial);
  expect(names({})).toEqual(STUDY_ROWS.map(({ file }) => file));
  expect(names({ search: 'WALK' })).toHaveLength(4);
  expect(names({ search: 'cycling 10' })).toEqual(['cycling-10.csv']);
  expect(names({ order: 'name' })).toEqual(STUDY_ROWS.map(({ file }) => String(file)).sort());
  expect(names({ shown: 'exclude' })).toEqual([]);
});

test('what is undecided and flagged most comes first when that is asked', async () => {
  const other = await sessionOf(await shelvedStudy(studyFolder(), trials));
  const trial = 'walking-6.csv';
  await other.decide({ trial, decision: 'open', reason: null, by: 'ada', at: null, why: 'look again' });
  const [first] = boardPage(boardRows(other.rows), { ...ALL, order: 'flags' }, FOLDER_STUDY, false).rows;
  expect(first.row.trial.trial).toBe(trial);
  expect(boardPage(boardRows(other.rows), { ...ALL, shown: 'to-decide' }, FOLDER_STUDY, false).of).toBe(1);
});

test('thousands of rows are paged, and a page that is gone is the last one', () => {
  const many = Array.from({ length: 260 }, () => session.rows).flat();
  const rows = boardRows(many.map((row, at) => ({ ...row, trial: { ...row.trial, trial: `${at}` } })));
  const last = boardPage(rows, { ...ALL, page: 999 }, FOLDER_STUDY, false);
  expect([last.rows.length, last.from, last.of, last.page]).toEqual([30, 41 * PAGE, 2080, 41]);
});

test('while a rater has not locked the counts, recordings stand in an order of their hashes and no search finds a group', async () => {
  const blind = await sessionOf(await shelvedStudy(studyFolder(), trials));
  expect(hidesNames(blind)).toBe(true);
  const rows = boardPage(boardRows(blind.rows), { ...ALL, search: 'walk', order: 'name' }, FOLDER_STUDY, true).rows;
  const hashes = rows.map(({ row }) => row.trial.sha256!);
  expect(hashes).toEqual([...hashes].sort());
  expect(rows.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  for (const rater of FOLDER_STUDY.blinding!.raters) {
    const key = await blind.begin(rater);
    expect(keyHash(key)).toMatch(/^[0-9a-f]{64}$/);
    expect(hidesNames(blind)).toBe(true);
    await blind.count(key, [{ step: 'lock', by: rater, at: null }]);
  }
  expect(hidesNames(blind)).toBe(false);
  const open = await sessionOf(
    await shelvedStudy(studyFolder(STUDY_ROWS, { ...FOLDER_STUDY, blinding: null }), trials),
  );
  expect(hidesNames(open)).toBe(false);
});
