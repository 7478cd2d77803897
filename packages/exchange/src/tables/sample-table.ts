import { SAMPLE_COLUMNS } from '@surae/shared';
import { ExchangeError } from '../errors.ts';
import type { StudyTrace } from '../study.ts';
import { type Cell, type Table, tableOf } from './table.ts';

/** What a table of samples is, whatever the trial. */
export const SAMPLE_SHAPE: Omit<Table, 'rows'> = {
  name: 'samples',
  title: 'Samples in SI units',
  columns: SAMPLE_COLUMNS,
};

const FIRST = 3;

/** Where a quantity stands; the first three columns are trial, clock and time. */
function placeOf(quantity: string, axis: string | null): number {
  const field = axis === null ? quantity : `${quantity}.${axis}`;
  const at = SAMPLE_COLUMNS.findIndex((column) => column.field === field);
  if (at >= FIRST) return at;
  throw new ExchangeError('bad-table', { file: 'samples', expected: 'a quantity of the list', actual: field });
}

/**
 * The samples of one trial, one row for each instant of each clock; a sample that is none is empty.
 *
 * @throws {@link ExchangeError} `bad-table` for a quantity that has no column
 */
export function sampleTable(trial: string, trace: StudyTrace): Table {
  const rows: Cell[][] = [];
  for (const [at, { timesS, channels }] of trace.groups.entries()) {
    const places = channels.map(({ quantity, axis }) => placeOf(quantity, axis));
    for (let i = 0; i < timesS.length; i += 1) {
      const row = new Array<Cell>(SAMPLE_COLUMNS.length).fill(null);
      row[0] = trial;
      row[1] = at + 1;
      row[2] = timesS[i]!;
      for (let c = 0; c < channels.length; c += 1) row[places[c]!] = channels[c]!.samples[i]!;
      rows.push(row);
    }
  }
  return tableOf({ ...SAMPLE_SHAPE, rows });
}
