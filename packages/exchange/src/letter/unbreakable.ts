/** The space that no line breaks at. */
const JOINED = '\u00A0';

/** A figure with its uncertainty and unit in one piece: no line breaks in it, and a double click takes more than the number. */
export function unbreakable(text: string): string {
  return text.replaceAll(' ', JOINED);
}

/** Text as it stands between tags, and nothing in it is one. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
