import { readdirSync, readFileSync } from 'node:fs';
import { RecordError, type RecordErrorCode, readRecording } from '@surae/records';
import { describe, expect, test } from 'vitest';

const folder = new URL('../../fixtures/broken/', import.meta.url);

interface Refusal {
  readonly code: RecordErrorCode;
  readonly row?: number;
  readonly column?: string;
  /** words of the message: what was expected and what came */
  readonly words: readonly string[];
}

const height = 'heel_height [mm]';
const time = 'time [s]';

const refusals: Readonly<Record<string, Refusal>> = {
  'empty.csv': { code: 'empty-file', words: ['an empty file', 'a header line'] },
  'header-only.csv': { code: 'header-only', row: 1, words: ['rows of numbers', 'a header and no row'] },
  'missing-time.csv': { code: 'no-time', row: 1, words: ['"time [s]"', 'the columns "sample", "heel_height [mm]"'] },
  'missing-quantity.csv': { code: 'no-quantity', row: 1, words: ['"force [N]"', '"temperature [Cel]"'] },
  'unknown-unit.csv': {
    code: 'unknown-unit',
    row: 1,
    column: 'heel_height [furlong]',
    words: ['heel height', 'm, cm, mm', 'got "furlong"'],
  },
  'two-columns-of-one-name.csv': {
    code: 'duplicate-column',
    row: 1,
    column: height,
    words: ['one column of each name', 'two named'],
  },
  'ragged-row.csv': { code: 'ragged-row', row: 122, words: ['2 fields as in the header', 'got 3'] },
  'text-in-a-number.csv': { code: 'not-a-number', row: 122, column: height, words: ['a number', '"12.5mm"'] },
  'nan-text.csv': { code: 'not-finite', row: 122, column: height, words: ['a finite number', '"NaN"'] },
  'infinity.csv': { code: 'not-finite', row: 122, column: height, words: ['a finite number', '"-Infinity"'] },
  'time-backwards.csv': { code: 'time-backwards', row: 122, column: time, words: ['a time after 2.38 s', 'got 1 s'] },
  'duplicate-time.csv': {
    code: 'time-repeated',
    row: 122,
    column: time,
    words: ['after 2.38 s', 'the same time again'],
  },
  'decimal-comma.csv': { code: 'decimal-comma', row: 2, column: time, words: ['a decimal point', '"0,00"'] },
  'unclosed-quote.csv': {
    code: 'unclosed-quote',
    row: 122,
    column: height,
    words: ['a closing quotation mark', 'the end of the file inside'],
  },
  'nul-bytes.csv': { code: 'nul-bytes', row: 122, column: height, words: ['text in UTF-8', 'a NUL byte at byte 1290'] },
  'utf-16.csv': { code: 'utf-16', words: ['text in UTF-8', 'got text in UTF-16'] },
  'picture.csv': { code: 'binary-file', words: ['text in UTF-8', 'a PNG picture'] },
  '5-hz.csv': { code: 'rate-too-low', column: time, words: ['10 to 2000 samples per second', 'got 5 ', 'too slow'] },
  'one-sample.csv': { code: 'too-few-samples', words: ['at least 10 samples', 'got 1'] },
  'cut-off-in-mid-row.csv': {
    code: 'cut-off',
    row: 401,
    column: time,
    words: ['a whole row of 2 fields', 'the end of the file in the middle of row 401'],
  },
};

function refusalOf(name: string): unknown {
  try {
    readRecording(readFileSync(new URL(name, folder)), { file: name });
  } catch (error) {
    return error;
  }
  return undefined;
}

describe('the twenty broken files', () => {
  test('are the twenty of the table', () => {
    expect(readdirSync(folder).sort()).toEqual(Object.keys(refusals).sort());
    expect(Object.keys(refusals)).toHaveLength(20);
  });

  test.each(Object.entries(refusals))(
    '%s is refused with file, row, column, what was expected and what came',
    (name, refusal) => {
      const error = refusalOf(name);
      expect(error).toBeInstanceOf(RecordError);
      const { code, file, row, column, message } = error as RecordError;
      expect({ code, file, row, column }).toEqual({
        code: refusal.code,
        file: name,
        row: refusal.row,
        column: refusal.column,
      });
      for (const words of [name, ...refusal.words]) expect(message).toContain(words);
      if (refusal.row !== undefined) expect(message).toContain(`row ${refusal.row}`);
      if (refusal.column !== undefined) expect(message).toContain(`column "${refusal.column}"`);
    },
  );

  test('differ from a file that is read', () => {
    const bytes = readFileSync(new URL('../recordings/made/heel-three-raises.csv', folder));
    expect(readRecording(bytes).groups[0]?.timesS).toHaveLength(400);
  });
});
