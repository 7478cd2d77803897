import type { KneeToWall } from '@surae/casebook';
import { expect, test } from 'vitest';
import { reachLines } from '../../../apps/dashboard/src/course/reach-lines.ts';
import { reachRest, reachRows, reachSentences, reachWords } from '../../../apps/dashboard/src/course/reach-words.ts';

const body: KneeToWall = { on: '2026-01-05', side: 'left', unit: 'cm', trials: [9, 10.5], pain: 2, skipped: null };
const line = (...changes: readonly Partial<KneeToWall>[]) =>
  reachLines(changes.map((change, at) => ({ id: `${at}`, at: '', author: '', body: { ...body, ...change } })))[0][0];

test('a test is told by its best trial, and one that was left out by why', () => {
  expect(reachWords(body)).toBe('Knee to wall, left: 10.5 cm, the best of 9, 10.5. Worst pain: 2 of 10.');
  expect(reachWords({ ...body, trials: [38], unit: 'deg', pain: null })).toBe('Knee to wall, left: 38 degrees.');
  expect(reachWords({ ...body, trials: [], skipped: 'sore-insertion' })).toBe(
    'Knee to wall, left: not done (sore at the heel bone).',
  );
});

test('a change is told with the wobble that it was held against', () => {
  expect(reachSentences(line({}, { on: '2026-03-30', trials: [12.5] }))).toEqual([
    'Left: 2 cm more than on 5 Jan 2026.',
    'That is more than the usual wobble of this test, 1.9 cm.',
  ]);
  expect(reachSentences(line({}, { on: '2026-03-30', trials: [9] }))).toEqual([
    'Left: 1.5 cm less than on 5 Jan 2026.',
    'Cannot be told from the usual wobble of this test, 1.9 cm.',
  ]);
  expect(reachSentences(line({}, { on: '2026-03-30' }))).toEqual(['Left: as on 5 Jan 2026.']);
  expect(reachSentences(line({}))).toEqual(['Left: one result so far, 10.5 cm; a change needs two.']);
  expect(reachSentences({ ...line({}), points: [] })).toEqual([]);
});

test('what it rests on names each source, and rows are the newest first', () => {
  expect(reachRest('deg')[0]).toMatch(/^4\.7 degrees, one tester.*Powden 2015/);
  expect(reachRest('cm').join(' ')).toMatch(/Chisholm 2012.*greatest figure counts.*no source/);
  expect(reachRows(line({}, { on: '2026-03-30', trials: [12.5] }))).toEqual([
    { when: '30 Mar 2026', value: '12.5 cm', trials: '12.5' },
    { when: '5 Jan 2026', value: '10.5 cm', trials: '9, 10.5' },
  ]);
});
