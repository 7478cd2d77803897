function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Comma-separated text by RFC 4180: quotes where they are needed, every line ended by CR LF. */
export function csvText(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return [header, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
}
