import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readByteRows } from '../../packages/records/src/byte-reader.ts';
import { RecordError } from '../../packages/records/src/errors.ts';
import { readQuotedRows } from '../../packages/records/src/quoted-reader.ts';
import { readTable } from '../../packages/records/src/table.ts';
import { runs } from '../support/runs.ts';

const encode = (text: string) => new TextEncoder().encode(text);

/** How a number may be spelled in a table. */
const spelling: fc.Arbitrary<string> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
  fc.double({ min: -2000, max: 2000, noNaN: true }).map((value) => value.toFixed(4)),
  fc.double({ min: -1e30, max: 1e30, noNaN: true }).map((value) => value.toExponential(10)),
  fc.tuple(fc.bigInt({ min: 0n, max: 10n ** 24n }), fc.integer({ min: -40, max: 40 })).map(([m, e]) => `${m}e${e}`),
  fc.tuple(fc.bigInt({ min: 0n, max: 2n ** 53n }), fc.integer({ min: -30, max: 30 })).map(([m, e]) => `${m}e${e}`),
  fc.tuple(fc.nat(), fc.nat()).map(([whole, part]) => `+${whole}.${part}`),
  fc.nat(9).map((digit) => `.${digit}`),
  fc.nat(9).map((digit) => `-00${digit}.`),
  fc.constantFrom('0', '-0', '9007199254740993', '123456789012345678', '1E22', '1e23', '5e-324', '0.1'),
);

const line = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom('', ' ', '\t ') },
  { weight: 1, arbitrary: fc.constantFrom('# a comment', '#', '#1,2,"3') },
  { weight: 8, arbitrary: fc.constant(undefined) },
);

interface Made {
  readonly text: string;
  readonly delimiter: string;
  readonly columnCount: number;
}

/** Tables of plain numbers: any delimiter, mixed line ends, blank lines, comments, blanks around numbers. */
const madeTable: fc.Arbitrary<Made> = fc
  .record({
    delimiter: fc.constantFrom(',', ';', '\t'),
    columnCount: fc.integer({ min: 2, max: 5 }),
    lines: fc.array(line, { minLength: 1, maxLength: 30 }),
    ends: fc.array(fc.constantFrom('\n', '\r\n', '\r'), { minLength: 1, maxLength: 6 }),
    mark: fc.boolean(),
    lastEnd: fc.boolean(),
    pads: fc.array(fc.constantFrom('', '', ' ', '  '), { minLength: 1, maxLength: 5 }),
  })
  .chain((shape) =>
    fc
      .array(spelling, { minLength: 1, maxLength: 150 })
      .map((numbers) => ({ text: write(shape, numbers), delimiter: shape.delimiter, columnCount: shape.columnCount })),
  );

function write(
  shape: {
    delimiter: string;
    columnCount: number;
    lines: readonly (string | undefined)[];
    ends: readonly string[];
    mark: boolean;
    lastEnd: boolean;
    pads: readonly string[];
  },
  numbers: readonly string[],
): string {
  let used = 0;
  const field = () => {
    used += 1;
    return `${shape.pads[used % shape.pads.length]}${numbers[used % numbers.length]}${shape.pads[(2 * used) % shape.pads.length]}`;
  };
  const row = () => Array.from({ length: shape.columnCount }, field).join(shape.delimiter);
  const header = Array.from({ length: shape.columnCount }, (_, index) => `c${index}`).join(shape.delimiter);
  // A line of a tab alone is a row of two empty fields where tabs divide.
  const kept = shape.lines.map((text) =>
    text === undefined || (shape.delimiter === '\t' && text.includes('\t')) ? row() : text,
  );
  const all = [header, ...kept, row()];
  const joined = all.map((text, index) => text + shape.ends[index % shape.ends.length]).join('');
  return `${shape.mark ? '\uFEFF' : ''}${shape.lastEnd ? joined : joined.replace(/[\r\n]+$/, '')}`;
}

/** The definition, slow and obvious: papaparse for the fields, Number() for the values. */
function oracle({ text, delimiter, columnCount }: Made): { columns: number[][]; lines: number[] } {
  const normal = text.replace(/^\uFEFF/, '').replace(/\r\n|\r/g, '\n');
  const columns: number[][] = Array.from({ length: columnCount }, () => []);
  const lines: number[] = [];
  let header = true;
  for (const [index, lineText] of normal.split('\n').entries()) {
    if (lineText.trim() === '' || lineText.startsWith('#')) continue;
    const fields = Papa.parse<string[]>(lineText, { delimiter }).data[0];
    if (header) {
      header = false;
      continue;
    }
    for (const [column, field] of fields.entries()) columns[column].push(Number(field));
    lines.push(index + 1);
  }
  return { columns, lines };
}

describe('the byte reader', () => {
  test('gives what papaparse and Number() give, to the last bit and line', () => {
    fc.assert(
      fc.property(madeTable, (made) => {
        const table = readTable(encode(made.text));
        const expected = oracle(made);
        expect(table.reader).toBe('bytes');
        expect(table.rowCount).toBe(expected.lines.length);
        expect(table.columns.map((column) => Array.from(column!))).toEqual(expected.columns);
        expect(expected.lines.map((_, row) => table.lineOf(row))).toEqual(expected.lines);
      }),
      runs(200, 3000),
    );
  });

  test('and papaparse with quotes around some fields give the same table', () => {
    fc.assert(
      fc.property(madeTable, fc.integer({ min: 1, max: 7 }), (made, step) => {
        let count = 0;
        const quote = (text: string) =>
          text.startsWith('#') || text.trim() === ''
            ? text
            : text
                .split(made.delimiter)
                .map((field) => (count++ % step === 0 ? `"${field}"` : field))
                .join(made.delimiter);
        const parts = made.text.split(/(\r\n|\n|\r)/);
        const headerIndex = parts.findIndex((part) => part.includes('c0'));
        const quotedText = parts.map((part, index) => (index <= headerIndex ? part : quote(part))).join('');
        const plain = readTable(encode(made.text));
        const quotedTable = readTable(encode(quotedText));
        expect(quotedTable.reader).toBe('papaparse');
        expect(quotedTable.columns).toEqual(plain.columns);
        for (let row = 0; row < plain.rowCount; row += 1) expect(quotedTable.lineOf(row)).toBe(plain.lineOf(row));
      }),
      runs(100, 1500),
    );
  });

  test('and the reader with quotes refuse the same damage with the same words', () => {
    const layout = { file: 'f.csv', delimiter: ',', names: ['a', 'b', 'c'], targets: [0, -1, 1] };
    const outcome = (read: typeof readByteRows | typeof readQuotedRows, bytes: Uint8Array): unknown => {
      try {
        const rows = read(bytes, 0, 5, layout);
        return rows && { columns: rows.columns, rowCount: rows.rowCount };
      } catch (error) {
        if (!(error instanceof RecordError)) throw error;
        return { code: error.code, message: error.message };
      }
    };
    let refused = 0;
    const dirty = fc.string({ unit: fc.constantFrom(...'0123456789.-e,,,\n\n\r #xé'), maxLength: 40 });
    fc.assert(
      fc.property(dirty, (text) => {
        const bytes = encode(text);
        const result = outcome(readByteRows, bytes);
        if (typeof result === 'object' && result !== null && 'code' in result) refused += 1;
        expect(result).toEqual(outcome(readQuotedRows, bytes));
      }),
      runs(1000, 20_000),
    );
    expect(refused).toBeGreaterThan(100);
  });

  test('leaves a table with quotes to the other reader', () => {
    const layout = { file: undefined, delimiter: ',', names: ['a', 'b'], targets: [0, -1] };
    expect(readByteRows(encode('1,"x"\n'), 0, 2, layout)).toBeUndefined();
    expect(readByteRows(encode('"1",2\n'), 0, 2, layout)).toBeUndefined();
    expect(readByteRows(encode('# "x"\n1,2\n'), 0, 2, layout)?.rowCount).toBe(1);
  });

  test('passes over the text of columns that were not asked for', () => {
    const layout = { file: undefined, delimiter: ',', names: ['a', 'b', 'c'], targets: [-1, 0, -1] };
    const rows = readByteRows(encode('x y,1.5,-\n,2,é\n'), 0, 2, layout);
    expect(rows?.columns).toEqual([Float64Array.of(1.5, 2)]);
  });

  test('has room for more rows than the first line suggests', () => {
    const first = `${'0'.repeat(400)}1,2`;
    const table = readTable(encode(`a,b\n${first}\n${'3,4\n'.repeat(500)}`));
    expect(table.rowCount).toBe(501);
    expect(table.columns[0]).toEqual(Float64Array.of(1, ...new Array<number>(500).fill(3)));
  });
});
