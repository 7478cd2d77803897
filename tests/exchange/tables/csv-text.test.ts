import { csvText } from '@surae/exchange';
import { expect, test } from 'vitest';

test('cells are quoted where they must be, and every line ends in CR LF', () => {
  expect(
    csvText(
      ['a', 'b'],
      [
        ['1', 'x,y'],
        ['he said "no"', 'two\nlines'],
      ],
    ),
  ).toBe('a,b\r\n1,"x,y"\r\n"he said ""no""","two\nlines"\r\n');
});
