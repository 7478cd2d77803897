import type { SurveyedTable } from '@surae/records';
import { type Answers, makeRecipe, parseRecipe, RecordError, readWithRecipe, TableSurvey } from '@surae/records';
import { describe, expect, test } from 'vitest';
import { messyTable } from '../../support/messy-table.ts';
import { inRun } from '../../support/runs.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

function survey(bytes: Uint8Array, answers: Answers = {}): SurveyedTable {
  const one = new TableSurvey({ file: 'dated.csv', answers });
  one.push(bytes);
  return one.end();
}

/** Twenty rows a second over the texts of their days: the later half of them on the second. */
function dated(first: string, second = first, half = '', decimal = '.'): string {
  const rows = Array.from({ length: 80 }, (_, i) => {
    const isBefore = i < 40;
    const inDay = isBefore
      ? `${half === '' ? '23' : '11'}:59:${58 + Math.floor(i / 20)}`
      : `${half === '' ? '00' : '12'}:00:0${Math.floor((i - 40) / 20)}`;
    const mark = half === '' ? '' : ` ${isBefore ? 'PM' : 'AM'}`;
    const height = (20 + 20 * Math.sin(i / 6)).toFixed(2).replace('.', decimal);
    return `${isBefore ? first : second} ${inDay}${decimal}${String((i % 20) * 50).padStart(3, '0')}${mark};${height}`;
  });
  return `time;heel left [mm]\n${rows.join('\n')}\n`;
}

const asked = (text: string): string[] => survey(bytesOf(text)).proposal.questions.map(({ id }) => id);
const dates = (text: string): readonly [unknown, boolean] => {
  const guess = survey(bytesOf(text)).proposal.form.dates;
  return [guess.value, guess.asks];
};

describe('the order of dates', () => {
  test('is told by a day that can be no month, in every spelling, over midnight', () => {
    for (const [text, order] of [
      [dated('3/29/2026', '3/30/2026'), 'month-day'],
      [dated('29/3/2026', '30/3/2026'), 'day-month'],
      // 29 may be a day or a year, but no year follows on the other overnight
      [dated('29-03-26', '30-03-26'), 'day-month'],
      [dated('3/29/26', '3/30/26', 'half'), 'month-day'],
      [dated('29.3.2026', '30.3.2026'), 'none'],
      [dated('3.4.26', '4.4.26'), 'none'],
      [dated('2026/03/04', '2026/03/05'), 'none'],
      [dated('2026-03-29', '2026-03-30', '', ','), 'none'],
    ] as const) {
      const { times, proposal } = survey(bytesOf(text));
      expect([proposal.form.dates.value, proposal.questions]).toEqual([order, []]);
      // the half-day clock goes from 11:59:58 PM to 12:00:00 AM
      expect([...times].findIndex((time, i) => Math.abs(time - (86_398 + i / 20)) > 1e-6)).toBe(-1);
    }
  });

  test('is asked where one cannot know it, whatever speaks for one of them', () => {
    for (const text of [
      dated('3/4/2026'),
      dated('03-04-2026'),
      dated('3/3/2026'),
      dated('3/4/2026', '3/4/2026', 'half'),
      dated('3/4/2026', '3/4/2026', '', ','),
      dated('26/03/04'),
      dated('29-03-26'),
      // a decimal comma speaks for the day first, and not enough
      dated('22-03-06', '22-03-06', '', ','),
    ]) {
      expect(asked(text)).toEqual(['dates']);
      const { confidence, options } = survey(bytesOf(text)).proposal.form.dates;
      expect(confidence).toBeLessThan(0.9);
      expect(options.length).toBeGreaterThan(1);
    }
  });

  test('is told by how the rows go on', () => {
    // from the third to the fourth of April, or from March to April
    expect(dates(dated('3/4/2026', '4/4/2026'))).toEqual(['day-month', false]);
    expect(dates(dated('3/4/2026', '3/5/2026'))).toEqual(['month-day', false]);
  });

  test('is followed when it is answered, kept in the recipe, and holds for the next file', () => {
    const bytes = bytesOf(dated('3/4/2026'));
    expect(() => makeRecipe(survey(bytes).proposal, 'open')).toThrow(/answers to dates/);
    for (const order of ['day-month', 'month-day'] as const) {
      const recipe = makeRecipe(survey(bytes, { dates: order }).proposal, 'told');
      expect(recipe.dates).toBe(order);
      expect(parseRecipe(JSON.stringify(recipe))).toEqual(recipe);
      const next = bytesOf(order === 'day-month' ? dated('29/3/2026', '30/3/2026') : dated('3/29/2026', '3/30/2026'));
      const { timesS } = readWithRecipe(next, recipe).recording.groups[0];
      expect([timesS[0], timesS.at(-1)]).toEqual([86_398, 86_401.95]);
      const other = bytesOf(order === 'day-month' ? dated('3/29/2026') : dated('29/3/2026'));
      expect(() => readWithRecipe(other, recipe, { file: 'other.csv' })).toThrow(RecordError);
    }
    // what is beside the times and what hangs on no order is in no recipe
    expect('dates' in makeRecipe(survey(bytesOf(dated('29.3.2026'))).proposal, 'points')).toBe(false);
  });
});

test('times of made tables are those that were written, whatever the day looks like', () => {
  let seen = 0;
  // tuning seeds: the sealed ones measure how sure one may be
  for (let seed = 1; seen < inRun(12, 40); seed += 1) {
    const { bytes, truth } = messyTable(seed);
    if (truth.timeUnit !== 'clock') continue;
    seen += 1;
    const first = survey(bytes);
    if (first.proposal.time.clock === null) continue;
    const { times, proposal } =
      truth.dates === 'none' || first.proposal.time.clock !== 'date-time'
        ? first
        : survey(bytes, { dates: truth.dates });
    const from = truth.timesS[0];
    const wrong = [...times].findIndex((time, i) => Math.abs(time - times[0] - (truth.timesS[i] - from)) > 0.0011);
    expect([seed, wrong, proposal.odd.unreadable.count]).toEqual([seed, -1, 0]);
  }
});
