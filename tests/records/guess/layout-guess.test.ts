import { makeRecipe, type Proposal, readWithRecipe, TableSurvey } from '@surae/records';
import { expect, test } from 'vitest';

const rows = Array.from({ length: 400 }, (_, i) => {
  const second = String(Math.floor(i / 100)).padStart(2, '0');
  return `10:00:${second},${String((i % 100) * 10).padStart(3, '0')};${70 + (i % 5)},25`;
});

const table = (head: string): Uint8Array => new TextEncoder().encode(`${head}\n${rows.join('\n')}\n`);

function look(bytes: Uint8Array): Proposal {
  const survey = new TableSurvey({ file: 'table.csv' });
  survey.push(bytes);
  return survey.end().proposal;
}

test.each(['hh:mm:ss,ms;kgf', 'HH:MM:SS.fff;kgf', ' dd.mm.yyyy hh:mm:ss ;kgf'])(
  'below the names "%s" is a row of units: it may say how a clock is written',
  (units) => {
    const bytes = table(`Zeit;Kraft links\n${units}`);
    const proposal = look(bytes);
    expect(proposal.form.unitRow.value).toMatchObject({ line: 2 });
    expect(proposal.form.header.value).toMatchObject({ line: 1, names: ['Zeit', 'Kraft links'] });
    expect(proposal.questions.filter(({ topic }) => topic === 'use' || topic === 'unit')).toEqual([]);
    const { recording } = readWithRecipe(bytes, makeRecipe(proposal, 'made'));
    const [{ timesS, channels }] = recording.groups;
    expect(timesS[1] - timesS[0]).toBeCloseTo(0.01, 9);
    // the kilogram-force is 9.80665 N (3rd CGPM, 1901)
    expect(channels[0].samples[0]).toBeCloseTo(70.25 * 9.80665, 6);
  },
);

test.each(['hh:mm:ss;reading', 'day.month;N', 'hh:mm:ss;dd.mm.yyyy'])('"%s" is none', (head) => {
  expect(look(table(`Zeit;Kraft links\n${head}`)).form.unitRow.value).toBe('none');
});
