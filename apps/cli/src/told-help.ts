import { expectedIn, TOLD_COLUMNS, type ToldColumn } from '@surae/study/words';

/** The lines of the help that explain every column: what it may hold, and what it says. */
export function toldHelp(width: number): string[] {
  const indent = ' '.repeat(24);
  return Object.entries<ToldColumn>(TOLD_COLUMNS).flatMap(([name, column]) => {
    const text = `${column.says}: ${expectedIn(column)
      .replace(/^one of /, '')
      .replace(/, or nothing$/, '')}`;
    const lines: string[] = [];
    for (const word of text.split(' ')) {
      const last = lines.at(-1);
      if (last !== undefined && last.length + 1 + word.length <= width - indent.length) {
        lines[lines.length - 1] = `${last} ${word}`;
      } else {
        lines.push(word);
      }
    }
    return lines.map((line, at) => (at === 0 ? `  ${name}`.padEnd(indent.length) : indent) + line);
  });
}
