/** Text broken at blanks into lines of at most `width` characters; a longer word stands alone. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** A name at the left and its text beside it, broken so that it stays in its own column. */
export function labelled(label: string, text: string, labelWidth: number, width: number): string[] {
  return wrapped(text, width - labelWidth).map(
    (line, index) => (index === 0 ? label.padEnd(labelWidth) : ' '.repeat(labelWidth)) + line,
  );
}
