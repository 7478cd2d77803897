import Papa from 'papaparse';

/** The cells of comma-separated text by an outside parser, blank last line left out; any complaint of it fails. */
export function csvCells(text: string): string[][] {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: ',', newline: '\r\n' });
  if (errors.length > 0) throw new Error(errors.map((error) => error.message).join('; '));
  return data.at(-1)?.join('') === '' ? data.slice(0, -1) : data;
}

/** The rows of comma-separated text, each by the names of its header. */
export function csvRows(text: string): Record<string, string>[] {
  const [header = [], ...rows] = csvCells(text);
  return rows.map((cells) => Object.fromEntries(header.map((key, index) => [key, cells[index] ?? ''])));
}
