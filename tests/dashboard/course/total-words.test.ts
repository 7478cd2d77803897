import type { QuestionnaireTotal } from '@surae/casebook';
import { expect, test } from 'vitest';
import { totalSeries } from '../../../apps/dashboard/src/course/total-change.ts';
import {
  rangeWords,
  seriesName,
  seriesRest,
  seriesRows,
  seriesSentences,
  totalWords,
} from '../../../apps/dashboard/src/course/total-words.ts';

const first: QuestionnaireTotal = {
  questionnaire: 'visa-a',
  languageVersion: 'de-CH 2019',
  total: 50,
  on: '2026-01-05',
  side: null,
};
const told = (...changes: readonly Partial<QuestionnaireTotal>[]) =>
  totalSeries(changes.map((change, at) => ({ id: `${at}`, at: '', author: '', body: { ...first, ...change } })))[0];
const later = (total: number, change: Partial<QuestionnaireTotal> = {}) =>
  seriesSentences(told(change, { on: '2026-03-30', total, ...change }));

test('a total on the line of time names its range and its better end; of an unknown one nothing is added', () => {
  expect(totalWords({ ...first, side: 'left' })).toBe('VISA-A, left (de-CH 2019): 50, from 0 to 100, and 100 is best.');
  expect(totalWords({ ...first, questionnaire: 'tendins-a' })).toMatch(
    /^TENDINS-A \(.*from 0 to 100, and 0 is best\.$/,
  );
  expect(totalWords({ ...first, questionnaire: 'tendon-8' })).toBe('tendon-8 (de-CH 2019): 50.');
});

test('a change is answered by yes, no or cannot tell, each with the limits it was held against', () => {
  expect(later(72)).toEqual([
    'VISA-A: better by 22 points, from 50 on 5 Jan 2026 to 72.',
    expect.stringMatching(/^People would call that important, .*more than 3 to 19 points.*14\.$/),
  ]);
  expect(later(64)[1]).toMatch(/^Cannot tell .*within 3 to 19 points.*14\.$/);
  expect(later(52)[1]).toMatch(/less than people call important: 3 to 19 points/);
  expect(later(50)).toEqual(['VISA-A: the same total as on 5 Jan 2026, 50.']);
});

test('what got worse is told without a verdict that was published for what gets better', () => {
  const [change, why, ...rest] = later(30);
  expect(change).toMatch(/worse by 20 points/);
  expect(why).toMatch(/about getting better/);
  expect(rest).toEqual([]);
});

test('without a figure that has limits, cannot tell; a wobble is told where it is known', () => {
  expect(later(70, { questionnaire: 'lefs' })[1]).toMatch(/^Cannot tell .*no figure with its uncertainty/);
  const tendins = seriesSentences(
    told({ questionnaire: 'tendins-a' }, { questionnaire: 'tendins-a', on: '2026-03-30', total: 40 }),
  );
  expect(tendins).toEqual([
    'TENDINS-A: better by 10 points, from 50 on 5 Jan 2026 to 40.',
    'Cannot tell it from the usual wobble of this total, 18 points.',
    expect.stringMatching(/^Cannot tell whether people/),
  ]);
});

test('one total alone is no change, and another version is said to stand apart', () => {
  expect(seriesSentences(told({}))).toEqual(['VISA-A: one total so far; a change needs two.']);
  expect(seriesSentences(told({ languageVersion: 'fr' }, { on: '2026-03-30' }))).toEqual([
    'VISA-A: one total so far; a change needs two.',
    expect.stringMatching(/another language version/),
  ]);
});

test('what it rests on names every figure with its source, and those from memory say so', () => {
  const rest = seriesRest(told({}));
  expect(rest[0]).toMatch(/^14 points \(3 to 19\).*Lagas 2021.*After 12 weeks\.$/);
  expect(rest[2]).toMatch(/^6\.5 points, without its uncertainty.*from memory/);
  expect(rest.at(-1)).toMatch(/do not agree/);
  expect(seriesRest(told({ questionnaire: 'tendins-a' }))[0]).toMatch(/^Wobble of 18 points: computed/);
});

test('names, ranges and rows', () => {
  const series = told({ side: 'right' }, { side: 'right', on: '2026-03-30', total: 60 });
  expect([seriesName(series), rangeWords(series.questionnaire)]).toEqual([
    'VISA-A, right',
    '0 to 100, and 100 is best.',
  ]);
  expect(seriesRows(series)).toEqual([
    { when: '30 Mar 2026', total: '60', version: 'de-CH 2019' },
    { when: '5 Jan 2026', total: '50', version: 'de-CH 2019' },
  ]);
});
