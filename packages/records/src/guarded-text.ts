/** What stands before a text that a spreadsheet would run, and before one that begins with it already. */
export const GUARD = "'";

/**
 * Signs that make spreadsheets run a cell: the list of published advice against formula injection, with its wide forms (from
 * memory). A plus or minus before a plain number runs nothing.
 */
const RUN = String.raw`(?:[=@\uFF1D\uFF20]|[+\-\uFF0B\uFF0D](?!\d+(?:[.,]\d+)?(?:[eE][+-]?\d+)?\s*(?:[,;\t\r\n]|$)))`;

/** Blanks that some spreadsheets pass over, without those that part cells or rows. */
const BLANKS = String.raw`[^\S\t\r\n]*`;

const STARTS = new RegExp(String.raw`^(?:[\t\r\n]|${BLANKS}${RUN})`);

/**
 * Places inside a text where a cell begins for a spreadsheet that parts cells otherwise than the file does: one with a decimal
 * comma parts at semicolons, and then no quote around a cell holds.
 */
const INSIDE = { after: String.raw`(?<=[;\t\r\n])`, before: String.raw`(?='*${BLANKS}${RUN})` };

/** The same in a line that is not quoted, where commas part cells too and quotes are taken off. */
const IN_NOTE = { after: String.raw`(?<=[,;\t])`, before: String.raw`(?=["']*${BLANKS}${RUN})` };

const put = ({ after, before }: typeof INSIDE): RegExp => new RegExp(after + before, 'g');
const found = ({ after, before }: typeof INSIDE): RegExp => new RegExp(after + GUARD + before, 'g');

const PUT_INSIDE = put(INSIDE);
const FOUND_INSIDE = found(INSIDE);
const PUT_IN_NOTE = put(IN_NOTE);
const FOUND_IN_NOTE = found(IN_NOTE);

/** A text of a cell that no spreadsheet runs. Plain numbers stay as they are, negative ones too. */
export function guarded(text: string): string {
  const inside = text.replace(PUT_INSIDE, GUARD);
  return STARTS.test(text) || text.startsWith(GUARD) ? GUARD + inside : inside;
}

/** The text as it was before {@link guarded}. */
export function unguarded(text: string): string {
  const start = text.startsWith(GUARD) ? GUARD.length : 0;
  return text.slice(start).replace(FOUND_INSIDE, '');
}

/** A note of a recording, after its mark `#`, in which no spreadsheet runs anything. */
export function guardedNote(text: string): string {
  return text.replace(PUT_IN_NOTE, GUARD);
}

/** The note as it was before {@link guardedNote}. */
export function unguardedNote(text: string): string {
  return text.replace(FOUND_IN_NOTE, '');
}
