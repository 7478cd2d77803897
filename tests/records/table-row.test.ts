import { describe, expect, test } from 'vitest';
import { columnLabel, isBlank, rowNumbers } from '../../packages/records/src/table-row.ts';

const layout = { file: undefined, delimiter: ',', names: ['t', '', 'f'], targets: [1, -1, 0] };

describe('the numbers of a row', () => {
  test('stand in the order of the targets; other fields may hold anything', () => {
    expect(rowNumbers(['1', 'x', ' 2.5 '], 2, false, layout)).toEqual([2.5, 1]);
  });

  test('are refused in the order of the columns', () => {
    expect(() => rowNumbers(['a', '', 'b'], 2, false, layout)).toThrow('row 2, column "t"');
    expect(() => rowNumbers(['1', '', 'b'], 2, false, layout)).toThrow('row 2, column "f"');
  });

  test('of a row without its line end may be the start of a row', () => {
    expect(() => rowNumbers(['1', ''], 9, true, layout)).toThrow('column "2": expected a whole row of 3 fields');
    expect(() => rowNumbers(['1', ''], 9, false, layout)).toThrow(
      'column "f": expected 3 fields as in the header, got 2',
    );
    expect(() => rowNumbers(['1', '', '-'], 9, true, layout)).toThrow('in the middle of row 9');
    expect(() => rowNumbers(['-', '', '1'], 9, true, layout)).toThrow('expected a number, got "-"');
    expect(rowNumbers(['1', '', '2'], 9, true, layout)).toEqual([2, 1]);
  });
});

describe('a row that cannot be read says what may be behind it', () => {
  const two = { file: 'f.csv', delimiter: ',', names: ['time [s]', 'force [N]'], targets: [0, 1] };
  test.each([
    ['a delimiter at its end', ['1', '2', ' '], 'expected 2 fields as in the header, got 3 (the last one is empty'],
    ['three values', ['1', '2', '3'], 'expected 2 fields as in the header, got 3'],
    ['decimal commas', ['1', '2', '3', '4'], 'got 4 (are these decimal commas?)'],
    ['a remark', ['  # pause'], 'column "force [N]": expected 2 fields as in the header, got 1, "  # pause"'],
    ['the header again', ['time [s]', ' force [N]'], 'expected a number, got "time [s]" (the header again)'],
    ['a name', ['time [s]', '1'], 'expected a number, got "time [s]"'],
  ])('%s', (_, fields, words) => {
    expect(() => rowNumbers(fields, 5, false, two)).toThrow(words);
  });

  test('and says no more than that', () => {
    expect(() => rowNumbers(['1', '2', '3'], 5, false, two)).toThrow(/got 3$/);
    expect(() => rowNumbers(['time [s]', '1'], 5, false, two)).toThrow(/got "time \[s\]"$/);
  });
});

test('a column without a name is called by its number', () => {
  expect([0, 1, 2, 3].map((index) => columnLabel(layout.names, index))).toEqual(['t', '2', 'f', '4']);
});

test('only blanks and tabs make a blank line', () => {
  expect(['', ' ', '\t ', '\u00A0', '0'].map(isBlank)).toEqual([true, true, true, false, false]);
});
