import { expect, test } from 'vitest';
import { readRatingTable } from '../../packages/records/src/rating-table.ts';

const read = (text: string) => readRatingTable(new TextEncoder().encode(text), 't.csv');

test('wide and long tables of the same values hold the same cells', () => {
  const wide = read('# a note\nsubject,A [mm],B [mm]\nP1,1.5,2\n\nP2,-3,\n');
  const long = read('subject;rater;value [mm]\r\nP1;A;1.5\r\nP1;B;2\r\nP2;A;-3\r\nP2;B;\r\n');
  expect(wide).toEqual({
    unit: 'mm',
    kind: 'numbers',
    factors: ['rater'],
    cells: [
      { subject: 'P1', rater: 'A', day: '', value: 1.5 },
      { subject: 'P1', rater: 'B', day: '', value: 2 },
      { subject: 'P2', rater: 'A', day: '', value: -3 },
      { subject: 'P2', rater: 'B', day: '', value: null },
    ],
  });
  expect(long).toEqual(wide);
});

test('the unit verdict makes words of the values', () => {
  const { kind, cells } = read('subject,A [verdict],B [verdict]\n1,yes, no \n2,,yes\n');
  expect(kind).toBe('words');
  expect(cells.map(({ value }) => value)).toEqual(['yes', 'no', null, 'yes']);
});

test.each([
  [
    'text',
    'subject,A [mm],B [mm]\nP1,1,12mm\n',
    'not-a-number',
    2,
    'column "B [mm]": expected a number, or nothing where none was taken, got "12mm"',
  ],
  ['NaN', 'subject,A [mm],B [mm]\nP1,NaN,1\n', 'not-finite', 2, 'column "A [mm]"'],
  ['a decimal comma', 'subject;A [mm];B [mm]\nP1;1,5;1\n', 'decimal-comma', 2, 'decimal point'],
  ['a subject without a name', 'subject,A [mm],B [mm]\nP1,1,2\n,1,2\n', 'empty-field', 3, 'column "subject"'],
  ['a short row', 'subject,A [mm],B [mm]\nP1,1\n', 'ragged-row', 2, 'expected 3 fields'],
  ['no row', 'subject,A [mm],B [mm]\n', 'header-only', 1, 'rows below'],
  [
    'the same subject twice',
    'subject,A [mm],B [mm]\nP1,1,2\nP2,1,2\n\nP1,1,2\n',
    'repeated-rating',
    5,
    '"P1", "A" again, as in row 2',
  ],
  [
    'the same rating twice',
    'subject,rater,day,value [mm]\nP1,A,1,2\nP1,A,2,2\nP1,A,1,3\n',
    'repeated-rating',
    4,
    '"P1", "A", "1" again, as in row 2',
  ],
])('%s is refused with its place', (_, text, code, row, words) => {
  expect(() => read(text)).toThrow(expect.objectContaining({ code, row, file: 't.csv' }));
  expect(() => read(text)).toThrow(words);
});

test('bytes that are no text are refused', () => {
  expect(() => readRatingTable(new Uint8Array([0x50, 0x4b, 3, 4]))).toThrow(
    expect.objectContaining({ code: 'binary-file' }),
  );
  expect(() => readRatingTable(new Uint8Array(0))).toThrow(expect.objectContaining({ code: 'empty-file' }));
});
