import { ExchangeError } from '../errors.ts';

/**
 * The cells of comma-separated text by RFC 4180, one list a row. Strict: this reads what was written here, and what was
 * changed by hand is told and not guessed.
 *
 * @throws {@link ExchangeError} `bad-file` at a quote that is out of place or never closed, and at a line without CR LF
 */
export function csvRows(text: string, file: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  const plain = /[^,\r\n"]*/y;
  const wrong = (expected: string, actual: string): ExchangeError =>
    new ExchangeError('bad-file', { file, row: rows.length + 1, expected, actual });
  while (at < text.length) {
    const isQuoted = text[at] === '"';
    let cell = '';
    if (isQuoted) {
      let from = at + 1;
      for (;;) {
        const end = text.indexOf('"', from);
        if (end < 0) throw wrong('a closing quote', 'the end of the file');
        cell += text.slice(from, end);
        at = end + 1;
        if (text[at] !== '"') break;
        cell += '"';
        from = at + 1;
      }
    } else {
      plain.lastIndex = at;
      cell = plain.exec(text)![0];
      at += cell.length;
    }
    row.push(cell);
    if (text[at] === ',') {
      at += 1;
      if (at === text.length) throw wrong('a line that ends in CR LF', 'the end of the file');
    } else if (text.startsWith('\r\n', at)) {
      at += 2;
      rows.push(row);
      row = [];
    } else {
      throw wrong(
        'a comma or CR LF after a cell',
        at >= text.length ? 'the end of the file' : JSON.stringify(text[at]),
      );
    }
  }
  return rows;
}
