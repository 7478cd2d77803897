/** What parts the fields of a line; a blank stands for any run of blanks and tabs. */
export type FieldDelimiter = ',' | ';' | '\t' | '|' | ' ';

export const fieldDelimiters = ['\t', ';', ',', '|', ' '] as const satisfies readonly FieldDelimiter[];

/**
 * The fields of one line. Quotation marks are those of RFC 4180: a field that begins with one ends with one, two of them
 * inside are one. A field that goes on over a line end is not known: undefined, as for anything after a closing mark.
 */
export function splitFields(line: string, delimiter: FieldDelimiter): string[] | undefined {
  if (delimiter === ' ') {
    const text = line.trim();
    return text.includes('"')
      ? quotedFields(text.replace(/[ \t]+(?=(?:[^"]*"[^"]*")*[^"]*$)/g, ' '), ' ')
      : text.split(/[ \t]+/);
  }
  return line.includes('"') ? quotedFields(line, delimiter) : line.split(delimiter);
}

function quotedFields(line: string, delimiter: string): string[] | undefined {
  const fields: string[] = [];
  let at = 0;
  for (;;) {
    while (delimiter !== ' ' && line[at] === ' ') at += 1;
    if (line[at] === '"') {
      let text = '';
      for (at += 1; ; at += 1) {
        if (at >= line.length) return undefined;
        if (line[at] !== '"') text += line[at];
        else if (line[at + 1] === '"') {
          text += '"';
          at += 1;
        } else break;
      }
      at += 1;
      while (delimiter !== ' ' && line[at] === ' ') at += 1;
      if (at < line.length && line[at] !== delimiter) return undefined;
      fields.push(text);
    } else {
      const end = line.indexOf(delimiter, at);
      fields.push(end < 0 ? line.slice(at) : line.slice(at, end));
      at = end < 0 ? line.length : end;
    }
    if (at >= line.length) return fields;
    at += 1;
  }
}
