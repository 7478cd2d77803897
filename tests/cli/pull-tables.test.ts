import { expect, test } from 'vitest';
import { outcomeRows } from '../../apps/cli/src/outcome-rows.ts';
import { resultTables } from '../../apps/cli/src/result-tables.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { rampEffort } from '../support/made-pull.ts';
import { madeRecording } from '../support/made-recording.ts';

function tables() {
  const efforts = [rampEffort(4, 900, 2, 0.1), rampEffort(16, 800, 2, 4)];
  const text = madeRecording({ efforts, lengthS: 28, sampleRateHz: 200, noise: 0.5, rest: () => 85 });
  const found = outcomeRows(assessedPulls(text, pullItem({}, { person: 'P1' })), ['person']);
  const shapes = resultTables({ carried: ['person'], tests: new Set(['isometric']), compares: false });
  return shapes.slice(-2).map(({ name, columns }) => ({
    name,
    columns,
    rows: found[name].map((row) => Object.fromEntries(row.map((cell, at) => [columns[at].key, cell]))),
  }));
}

test('one row an effort and one a recording, with what the manifest said', () => {
  const [efforts, pulls] = tables();
  expect([efforts.name, pulls.name]).toEqual(['efforts.csv', 'pulls.csv']);
  expect(efforts.rows).toMatchObject([
    {
      file: 'pull.csv',
      person: 'P1',
      side: 'left',
      test: 'isometric',
      placement: 'platform',
      index: 1,
      accepted: 'no',
      reasons: 'short-plateau',
      peak_nm: null,
    },
    { index: 2, accepted: 'yes', reasons: '' },
  ]);
  expect(pulls.rows).toMatchObject([
    {
      person: 'P1',
      protocol: 'isometric.seated',
      'count.found': 2,
      'count.accepted': 1,
      'trials.another': 'too-few',
    },
  ]);
});

test('every column is explained once and every row fills its columns', () => {
  for (const { columns, rows } of tables()) {
    expect(new Set(columns.map(({ key }) => key)).size).toBe(columns.length);
    for (const { key, description } of columns) expect(description.length, key).toBeGreaterThan(3);
    for (const row of rows) expect(Object.keys(row)).toHaveLength(columns.length);
  }
});
