import { expect, test } from 'vitest';
import { resultFiles, zipName } from '../../../apps/dashboard/src/study/result-zip.ts';
import { studyFolder } from '../../support/study-folder.ts';
import { plainTrials, sessionOf, shelvedStudy } from '../../support/study-session.ts';

test('the zip holds every file of the result, and the lists that the command in its record reads', async () => {
  const session = await sessionOf(await shelvedStudy(studyFolder(), plainTrials()));
  await session.decide({ trial: 'walking-3.csv', decision: 'open', reason: null, by: 'ada', at: null, why: 'look' });
  const results = session.results();
  const files = new Map(resultFiles(session, results).map(({ name, text }) => [name, text]));
  expect(results.outputs.length).toBeGreaterThan(10);
  for (const { name, text } of results.outputs) expect([name, files.get(`results/${name}`)]).toEqual([name, text]);
  expect(files.get('decisions.jsonl')).toBe(session.decisionsText);
  expect(files.size).toBe(results.outputs.length + 1);
  expect(results.origin.command).toContain('--decisions decisions.jsonl');
});

test('a zip is named after the study, whatever its title holds', () => {
  expect(zipName('Heel raises: before/after (2026)')).toBe('heel-raises-before-after-2026.zip');
  expect(zipName('???')).toBe('study.zip');
});
