import { readTable, sampleText } from '@surae/records';
import { expect, test } from 'vitest';

test('notes, then names, then rows, each on a line of its own', () => {
  const rows = [
    ['0', '1'],
    ['0.5', '-2'],
  ];
  expect(sampleText(['made by hand', 'a\nb', ''], ['time [s]', 'force [N]'], rows)).toBe(
    '# made by hand\n# a\n# b\n#\ntime [s],force [N]\n0,1\n0.5,-2\n',
  );
});

test('a note that a spreadsheet would run is kept from it, and read as it was', () => {
  const text = sampleText(['plate 3, =HYPERLINK("x")'], ['time [s]', 'force [N]'], [['0', '1']]);
  expect(text.split('\n')[0]).toBe(`# plate 3,' =HYPERLINK("x")`);
  expect(readTable(new TextEncoder().encode(text)).notes).toEqual(['plate 3, =HYPERLINK("x")']);
});
