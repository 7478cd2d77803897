/** What stands before a text that a spreadsheet would run, and before one that begins with it already. */
export const GUARD = "'";

/**
 * Beginnings that make spreadsheets run a cell: the list of published advice against formula injection, with its wide
 * forms (from memory).
 */
const RUNS = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;

/** A text that no spreadsheet runs. Numbers are no texts and stay as they are. */
export function guarded(text: string): string {
  return RUNS.test(text) || text.startsWith(GUARD) ? `${GUARD}${text}` : text;
}

/** The text as it was before {@link guarded}. */
export function unguarded(text: string): string {
  return text.startsWith(GUARD) ? text.slice(GUARD.length) : text;
}
