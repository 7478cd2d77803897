import { columnValue, pullRow } from '@surae/analysis';
import { expect, test } from 'vitest';
import { OUTCOME_COLUMNS } from '../../../packages/study/src/declared/outcome-columns.ts';
import { outcomeFigures, outcomeOf } from '../../../packages/study/src/quality/trial-figures.ts';
import { handMadeOutcome } from '../../support/hand-made-outcome.ts';
import { donePullSet } from '../../support/made-pull-visit.ts';

const raises = handMadeOutcome([101.25, 98.5, 60.125], 71.5).report;
const pulls = pullRow(donePullSet('right').report!);

test.each([
  ['heel-raise', raises],
  ['isometric', pulls],
] as const)('what is kept of a report of %s gives every column the same value, and is far smaller', (name, report) => {
  const kept = JSON.parse(JSON.stringify(outcomeFigures(name, report))) as object;
  const columns = OUTCOME_COLUMNS[name];
  const values = columns.map((column) => [column.key, columnValue(column, report)]);
  expect(columns.map((column) => [column.key, columnValue(column, kept)])).toEqual(values);
  const fractions = values.filter(([, value]) => typeof value === 'number' && !Number.isInteger(value));
  expect(fractions.length).toBeGreaterThan(2);
  expect(JSON.stringify(kept).length).toBeLessThan(JSON.stringify(report).length / 2);
});

test('an outcome that was not measured is null, and never zero', () => {
  expect(outcomeOf('heel-raise', 'count.attempted', { figures: {} })).toBeNull();
  expect(outcomeOf('heel-raise', 'count.attempted', { figures: null })).toBeNull();
  expect(outcomeOf('heel-raise', 'no.such', { figures: raises })).toBeNull();
});
