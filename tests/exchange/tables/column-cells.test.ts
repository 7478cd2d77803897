import { columnCells } from '@surae/exchange';
import { EFFORT_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

const columns = EFFORT_COLUMNS.filter(({ key }) => ['index', 'onset_s', 'rfd_coarse', 'reasons'].includes(key));

test('figures by their columns: nine digits, several words in one cell, null where there is nothing', () => {
  const source = { index: 1, onsetS: { value: 1 / 3 }, coarse: false, reasons: ['a', 'b'] };
  expect(columnCells(columns, source)).toEqual([1, 0.333333333, false, 'a; b']);
});
