import { guarded, guardedNote, readTable, unguarded, unguardedNote } from '@surae/records';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.ts';

test.each(['=', '+', '-', '@', '\t', '\r', '\n', '\uFF1D', ' =', '\u00a0@'])(
  'a text that begins with %j is guarded',
  (first) => {
    expect(guarded(`${first}A1`)).toBe(`'${first}A1`);
  },
);

test('any other text stays as it is', () => {
  for (const text of ['', 'a=1', '1-2', 'Zoë', 'a, =b', 'x; y']) expect(guarded(text)).toBe(text);
});

test('a number is no formula, with its sign too', () => {
  for (const text of ['-2', '+2', '-2.5', '-2,5', '-1e-7', '+1E+3']) expect(guarded(text)).toBe(text);
  for (const text of ['-2+3', '-2.5.1', '-', '--2', '-1e', '+cmd', '-2 m']) expect(guarded(text)).toBe(`'${text}`);
});

test('what a spreadsheet with semicolons would take for a cell is guarded inside the text', () => {
  expect(guarded('left; =A1')).toBe("left;' =A1");
  expect(guarded('two\n@lines')).toBe("two\n'@lines");
  expect(guarded('left; -2')).toBe('left; -2');
});

test('a note stands on a line that every comma parts', () => {
  expect(guardedNote('plate 3, =A1, -2.5')).toBe("plate 3,' =A1, -2.5");
  expect(guardedNote('plate 3,"=A1"')).toBe(`plate 3,'"=A1"`);
  expect(guardedNote('no 5: a=b')).toBe('no 5: a=b');
});

test('the guard can be taken off, whatever the text held', () => {
  const awkward = fc.stringMatching(/^[-'=+@;,"\t\r\n 1a]{0,8}$/);
  for (const texts of [fc.string(), awkward]) {
    fc.assert(
      fc.property(texts, (text) => {
        expect(unguarded(guarded(text))).toBe(text);
        expect(unguardedNote(guardedNote(text))).toBe(text);
      }),
      runs(500, 50_000),
    );
  }
});

test('a table gives its notes as they were', () => {
  const text = `# ${guardedNote('plate 3, =A1')}\ntime [s],force [N]\n0,1\n`;
  expect(readTable(new TextEncoder().encode(text)).notes).toEqual(['plate 3, =A1']);
});
