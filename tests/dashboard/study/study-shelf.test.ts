import { expect, test } from 'vitest';
import { studyFolder } from '../../support/study-folder.ts';
import { plainTrials, SOFTWARE, sessionOf, shelvedStudy } from '../../support/study-session.ts';

const trials = plainTrials();

test('a study that is opened again has its files, what was found, what was decided and what was counted', async () => {
  const folder = studyFolder();
  const study = await shelvedStudy(folder, trials);
  const session = await sessionOf(study);
  await session.decide({ trial: 'cycling-10.csv', decision: 'open', reason: null, by: 'ada', at: null, why: 'look' });
  const key = await session.begin('ben');
  await session.count(key, [{ step: 'count', item: key.items[0].item, count: 4 }]);
  const again = await sessionOf(study);
  expect(again.trials).toEqual(session.trials);
  expect(again.isWhole).toBe(true);
  expect(again.decisions).toEqual(session.decisions);
  expect(again.keyOf('ben')).toEqual(key);
  expect([...again.book(key).counts]).toEqual([[key.items[0].item, 4]]);
  expect(await again.begin('ben')).toEqual(key);
  const { sha256 } = again.facts[2];
  expect(new TextDecoder().decode(await again.bytes(sha256!))).toBe(folder.text('cycling-7.csv'));
  expect(await study.shelf.entries()).toMatchObject([{ id: study.id, recordings: 8, isDemo: false }]);
});

test('what another version of the software found is found anew, and so is a recording without a result', async () => {
  const study = await shelvedStudy(studyFolder(), new Map([...trials].slice(0, 3)));
  const { session } = (await study.shelf.open(study.id, SOFTWARE))!;
  expect(session.progress).toEqual({ done: 3, of: 8, perS: null, runs: false });
  expect(session.rows).toHaveLength(3);
  expect((await study.shelf.open(study.id, 'surae 9.9.9'))!.session.progress.done).toBe(0);
  expect(await study.shelf.open('nobody', SOFTWARE)).toBeUndefined();
});
