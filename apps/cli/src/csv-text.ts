/** A table that holds text: a header and rows, with the line on which each row starts. */
export interface TextTable {
  readonly header: readonly string[];
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

function cell(value: string): string {
  return /[",\r\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value;
}

/** Comma-separated text as RFC 4180 has it: quotes where needed, every line ended by CR LF. */
export function csvText(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return [header, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/**
 * The cells of comma-separated text (RFC 4180; a semicolon as separator when the first line holds one and no comma). Lines
 * that are empty or begin with # are passed over.
 *
 * @throws SyntaxError when a quote is never closed
 */
export function parseCsvText(text: string): TextTable {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const rows = splitRows(body, separatorOf(body));
  const [header, ...rest] = rows.filter((row) => row.cells.some((value) => value.trim() !== ''));
  return { header: (header?.cells ?? []).map((name) => name.trim()), rows: rest };
}

function separatorOf(text: string): string {
  const first = text.split('\n').find((line) => line.trim() !== '' && !line.startsWith('#')) ?? '';
  return first.includes(';') && !first.includes(',') ? ';' : ',';
}

function splitRows(text: string, separator: string): { line: number; cells: string[] }[] {
  const rows: { line: number; cells: string[] }[] = [];
  let at = 0;
  let line = 1;
  while (at < text.length) {
    if (text[at] === '#') {
      at = after(text, at);
      line += 1;
      continue;
    }
    const row = { line, cells: [] as string[] };
    for (;;) {
      const found = text[at] === '"' ? quoted(text, at, line) : plain(text, at, separator);
      row.cells.push(found.value);
      line += found.lines;
      at = found.next;
      if (text[at] !== separator) break;
      at += 1;
    }
    rows.push(row);
    at = after(text, at);
    line += 1;
  }
  return rows;
}

/** Where the next line begins. */
function after(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return end === -1 ? text.length : end + 1;
}

function plain(text: string, from: number, separator: string): { value: string; next: number; lines: number } {
  let next = from;
  while (next < text.length && text[next] !== separator && text[next] !== '\n' && text[next] !== '\r') next += 1;
  return { value: text.slice(from, next), next, lines: 0 };
}

function quoted(text: string, from: number, line: number): { value: string; next: number; lines: number } {
  let value = '';
  let at = from + 1;
  for (;;) {
    const close = text.indexOf('"', at);
    if (close === -1) throw new SyntaxError(`line ${line}: a quote is opened and never closed`);
    value += text.slice(at, close);
    if (text[close + 1] !== '"') return { value, next: close + 1, lines: value.split('\n').length - 1 };
    value += '"';
    at = close + 2;
  }
}
