import { expect, test } from 'vitest';
import { readQuotedRows } from '../../packages/records/src/quoted-reader.ts';

const layout = { file: 'f', delimiter: ';', names: ['a', 'b'], targets: [1, 0] };
const encode = (text: string) => new TextEncoder().encode(text);

test('quoted numbers are read into the columns that were asked for', () => {
  const rows = readQuotedRows(encode('x\n"1";2\r\n# 9;9\r\r"-3";"4e1"'), 2, 2, layout);
  expect(rows.columns).toEqual([Float64Array.of(2, 40), Float64Array.of(1, -3)]);
  expect([rows.lines.lineOf(0), rows.lines.lineOf(1)]).toEqual([2, 5]);
});

test('many rows are kept, past the first room for them', () => {
  const rows = readQuotedRows(encode('"1";2\n'.repeat(5000)), 0, 1, layout);
  expect(rows.rowCount).toBe(5000);
  expect(rows.columns[1]).toEqual(new Float64Array(5000).fill(1));
});

test('a fault is refused by line and column', () => {
  expect(() => readQuotedRows(encode('"1";2\n"1;5";2\n'), 0, 7, layout)).toThrow(
    'f, row 8, column "a": expected a number',
  );
  expect(() => readQuotedRows(encode('"1";2\n"1"'), 0, 7, layout)).toThrow('in the middle of row 8');
});
