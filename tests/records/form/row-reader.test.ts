import fc from 'fast-check';
import { expect, test } from 'vitest';
import { numberIn } from '../../../packages/records/src/form/number-form.ts';
import type { RowForm, RowWatcher } from '../../../packages/records/src/form/row-form.ts';
import { RowReader } from '../../../packages/records/src/form/row-reader.ts';
import { runs } from '../../support/runs.ts';

const form: RowForm = {
  encoding: 'utf-8',
  delimiter: ';',
  decimal: ',',
  thousands: null,
  kinds: ['number', 'number'],
  names: ['t', 'f'],
  dates: null,
  groupRow: null,
  unitRow: null,
  dataLine: 2,
  missing: new Set(['nan']),
};

class Notes implements RowWatcher {
  readonly all: string[] = [];
  readsOpenEnd = true;
  blank = (line: number): void => void this.all.push(`blank ${line}`);
  remark = (line: number, text: string): void => void this.all.push(`remark ${line} ${text}`);
  repeated = (line: number): void => void this.all.push(`repeated ${line}`);
  noRow = (line: number, text: string): void => void this.all.push(`no row ${line} ${text}`);
  missing = (line: number, column: number): void => void this.all.push(`missing ${line} ${column}`);
  unreadable = (line: number, column: number, text: string): void =>
    void this.all.push(`unreadable ${line} ${column} ${text}`);
  openEnd = (line: number): boolean => {
    this.all.push(`open ${line}`);
    return this.readsOpenEnd;
  };
}

function read(
  text: string,
  cuts: readonly number[] = [],
  other: Partial<RowForm> = {},
): { notes: string[]; columns: number[][] } {
  const notes = new Notes();
  const reader = new RowReader({ ...form, ...other }, notes, 'x');
  const bytes = new TextEncoder().encode(text);
  const bounds = [0, ...[...new Set(cuts.map((cut) => cut % bytes.length))].sort((a, b) => a - b), bytes.length];
  for (let i = 1; i < bounds.length; i += 1) reader.push(bytes.subarray(bounds[i - 1], bounds[i]));
  reader.end();
  return { notes: notes.all, columns: [0, 1].map((column) => [...reader.take(column)]) };
}

test('rows become numbers, everything else is told with its line', () => {
  const text = 't;f\r\n0;1,5\r\n\r\n# told;\r\nt;f\r\n1;NaN\r\n2;x\r\n3;1;2\r\nend\r\n4;1e2;\r\n;\r\n5;"6,5"\r\n7;8';
  const { notes, columns } = read(text);
  expect(columns).toEqual([
    [0, 1, 4, 5, 7],
    [1.5, Number.NaN, 100, 6.5, 8],
  ]);
  expect(notes).toEqual([
    'blank 3',
    'remark 4 told;',
    'repeated 5',
    'missing 6 1',
    'unreadable 7 1 x',
    'no row 8 3;1;2',
    'no row 9 end',
    'blank 11',
    'open 13',
  ]);
});

test('nothing depends on where chunks end, for every kind of line end', () => {
  const lines = ['t;f', '0;1,5', '', '1;NaN', 'end', '2;3'];
  fc.assert(
    fc.property(fc.constantFrom('\n', '\r\n', '\r'), fc.array(fc.nat(), { maxLength: 6 }), (eol, cuts) => {
      const text = lines.join(eol) + eol;
      expect(read(text, cuts)).toEqual(read(text));
      expect(read(text).columns[0]).toEqual([0, 1, 2]);
    }),
    runs(60, 2000),
  );
});

test('numbers straight from the bytes are those that the text spells, read one by one', () => {
  const digits = fc.tuple(
    fc.constantFrom('', '-', '+', ' '),
    fc.stringMatching(/^\d{1,19}$/),
    fc.stringMatching(/^(?:,\d{0,18})?$/),
    fc.stringMatching(/^(?:[eE][+-]?\d{1,3})?$/),
  );
  fc.assert(
    fc.property(digits, (parts) => {
      const text = parts.join('');
      const { columns, notes } = read(`t;f\n${text};1\n`);
      const value = numberIn(text, { decimal: ',', thousands: null });
      if (value === undefined) expect(notes).toEqual([`unreadable 2 0 ${text.trim()}`]);
      else expect(columns[0]).toEqual([value]);
    }),
    runs(500, 20_000),
  );
});

test('a damaged file is refused with its line', () => {
  expect(() => read('t;f\n1;\0\n')).toThrow(/x, row 2: expected text without NUL bytes/);
  const notes = new Notes();
  const long = new RowReader(form, notes, 'x');
  expect(() => long.push(new Uint8Array(1_000_001).fill(49))).toThrow(/row 1: expected a line end/);
  expect(() => {
    const bad = new RowReader({ ...form, dataLine: 1 }, notes, 'x');
    bad.push(Uint8Array.of(0xff, 59, 49, 10));
  }).toThrow(/row 1: expected text in UTF-8/);
});

test('UTF-16 that ends in half a character is refused', () => {
  const reader = new RowReader({ ...form, encoding: 'utf-16le', dataLine: 1 }, new Notes(), 'x');
  reader.push(Uint8Array.of(49, 0, 59, 0, 49, 0, 10, 0, 50));
  expect(() => reader.end()).toThrow(/whole characters of UTF-16LE/);
});

test('more rows than a block holds come in order', () => {
  const rows = Array.from({ length: 70_000 }, (_, i) => `${i};${i % 7}`);
  const { columns } = read(`t;f\n${rows.join('\n')}\n`);
  expect(columns[0].length).toBe(70_000);
  expect([columns[0][65_535], columns[0][65_536], columns[1][69_999]]).toEqual([65_535, 65_536, 69_999 % 7]);
});
