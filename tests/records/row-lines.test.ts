import { expect, test } from 'vitest';
import { RowLines } from '../../packages/records/src/row-lines.ts';

test('every row is found on the line it was noted with, gaps included', () => {
  const noted = [2, 3, 4, 7, 8, 20, 22, 24, 25];
  const lines = new RowLines();
  for (const [row, line] of noted.entries()) lines.add(row, line);
  expect(noted.map((_, row) => lines.lineOf(row))).toEqual(noted);
});
