import { describe, expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';
import { readTable } from '../../packages/records/src/table.ts';

const encode = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readTable(encode(text), { file: 't.csv' });

function refuse(text: string): RecordError {
  try {
    read(text);
  } catch (error) {
    if (error instanceof RecordError) return error;
    throw error;
  }
  throw new Error('was read');
}

describe('a table', () => {
  test('is read as it stands: names, numbers, lines', () => {
    const table = read('a,b\n1,2\n3,4\n');
    expect(table.names).toEqual(['a', 'b']);
    expect(table.columns).toEqual([Float64Array.of(1, 3), Float64Array.of(2, 4)]);
    expect([table.headerLine, table.lineOf(0), table.lineOf(1)]).toEqual([1, 2, 3]);
  });

  test.each([
    ['a comma', 'a,b\n1,2', ','],
    ['a semicolon', 'a;b\n1;2', ';'],
    ['a tab', 'a\tb\n1\t2', '\t'],
    ['a semicolon where a name holds a comma', 'a, first;b\n1;2', ';'],
    ['a comma where a quoted name holds semicolons', '"a;;;",b\n1,2', ','],
  ])('may be divided by %s', (_, text, delimiter) => {
    const table = read(text);
    expect(table.delimiter).toBe(delimiter);
    expect(table.columns).toEqual([Float64Array.of(1), Float64Array.of(2)]);
  });

  test('ends its last row without a line end too', () => {
    expect(read('a,b\n1,2\n3,4').columns[1]).toEqual(Float64Array.of(2, 4));
  });

  test('keeps the comments above its header and the lines of its rows', () => {
    const table = read('\uFEFF\n# made by hand\n#  twice \n\na,b\n# not kept\n1,2\n\n\n3,4\n');
    expect(table.notes).toEqual(['made by hand', 'twice']);
    expect([table.headerLine, table.lineOf(0), table.lineOf(1)]).toEqual([5, 7, 10]);
  });

  test('reads quoted fields, quotes in quotes and line ends in quotes', () => {
    // Source: RFC 4180, section 2, rules 5 to 7.
    const table = readTable(encode('n,note\n1,"b ""q"" c"\n2,"x\r\ny"\n3,z\n'), { columnIndices: [0] });
    expect(table.reader).toBe('papaparse');
    expect(table.columns).toEqual([Float64Array.of(1, 2, 3), undefined]);
    expect([0, 1, 2].map((row) => table.lineOf(row))).toEqual([2, 3, 5]);
  });

  test('becomes numbers only where they are asked for', () => {
    const table = readTable(encode('n,word\n1,x\n2,y\n'), { columnIndices: [0] });
    expect(table.columns).toEqual([Float64Array.of(1, 2), undefined]);
    expect(refuse('n,word\n1,x\n')).toMatchObject({ code: 'not-a-number', row: 2, column: 'word' });
  });
});

describe('a refusal', () => {
  test.each([
    ['a row too short', 'a,b,c\n1,2,3\n4,5\n6,7,8\n', 'ragged-row', 3, 'c', '3 fields as in the header, got 2'],
    ['a row too long', 'a,b\n1,2,3\n', 'ragged-row', 2, undefined, '2 fields as in the header, got 3'],
    ['decimal commas between commas', 'a,b\n0,00,12,5\n', 'ragged-row', 2, undefined, 'are these decimal commas?'],
    ['an empty field', 'a,b\n1,\n', 'empty-field', 2, 'b', 'a number, got an empty field'],
    ['a field of blanks', 'a,b\n 	,1\n', 'empty-field', 2, 'a', 'got an empty field'],
    ['a column without a name', 'a,\n1,x\n', 'not-a-number', 2, '2', 'got "x"'],
    ['the first of two faults', 'a,b\n1,2\nx,y\nz,\n', 'not-a-number', 3, 'a', 'got "x"'],
    ['a header again', 'a,b\n1,2\na,b\n', 'not-a-number', 3, 'a', 'got "a"'],
    ['a number out of range', 'a,b\n1,1e309\n', 'not-finite', 2, 'b', 'a finite number, got "1e309"'],
    ['a word after a closing quote', 'a,b\n1,"2"x\n3,4\n', 'malformed-quote', 2, 'b', 'a delimiter after the closing'],
    ['an open quote in the header', 'a,"b\n1,2\n', 'unclosed-quote', 1, undefined, 'a closing quotation mark'],
    ['the end after a delimiter', 'a,b\n1,2\n3,', 'cut-off', 3, 'b', 'a whole row of 2 fields'],
    ['the end after a sign', 'a,b\n1,2\n3,-', 'cut-off', 3, 'b', 'the end of the file in the middle of row 3'],
    ['the end after an exponent mark', 'a,b\n1,2\n3,4e', 'cut-off', 3, 'b', 'in the middle of row 3'],
    ['the end inside quotes', 'a,b\n1,2\n3,"4', 'unclosed-quote', 3, 'b', 'the end of the file inside "4"'],
    ['text at the very end', 'a,b\n1,2\n3,x', 'not-a-number', 3, 'b', 'got "x"'],
    ['very long text', `a,b\n1,${'x'.repeat(99)}\n`, 'not-a-number', 2, 'b', `got "${'x'.repeat(40)}"...`],
  ])('of %s names the place', (_, text, code, row, column, words) => {
    const error = refuse(text);
    expect({ code: error.code, row: error.row, column: error.column }).toEqual({ code, row, column });
    expect(error.message).toContain(words);
    expect(error.message.startsWith(`t.csv, row ${row}`)).toBe(true);
  });
});
