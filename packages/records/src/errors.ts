/** Why a file or a document was refused. Each comment says when it occurs and what to do. */
export type RecordErrorCode =
  /** no bytes, or only blank and comment lines: export the recording again */
  | 'empty-file'
  /** a picture, a workbook, an archive or another file that is not text: export as CSV */
  | 'binary-file'
  /** text in UTF-16: save as UTF-8 */
  | 'utf-16'
  /** the header holds bytes that are not UTF-8, or a document is not UTF-8 text: save as UTF-8 */
  | 'not-utf-8'
  /** zero bytes inside the text: the file was damaged, copy it again */
  | 'nul-bytes'
  /** a header and no row below it: nothing was recorded */
  | 'header-only'
  /** numbers where the names of the columns are needed: add a first line such as `time [s],force [N]` */
  | 'no-header'
  /** no column of sample times: add a column such as `time [s]` */
  | 'no-time'
  /** no column of a known quantity: add one such as `force [N]` */
  | 'no-quantity'
  /** a column of a known quantity without a unit in brackets: add it, a unit is never guessed */
  | 'missing-unit'
  /** the unit in brackets is not one of the quantity: use one of those listed */
  | 'unknown-unit'
  /** two columns with the same name, or two for the same quantity and axis: keep one */
  | 'duplicate-column'
  /** a row with more or fewer fields than the header: repair the row */
  | 'ragged-row'
  /** nothing between two delimiters where a number is needed */
  | 'empty-field'
  /** text where a number is needed */
  | 'not-a-number'
  /** NaN, infinity, or a number too large to hold */
  | 'not-finite'
  /** a decimal comma: export with decimal points */
  | 'decimal-comma'
  /** a quoted field that never ends */
  | 'unclosed-quote'
  /** text after the closing quote of a field */
  | 'malformed-quote'
  /** the file ends in the middle of its last row: copy it again */
  | 'cut-off'
  /** a sample time earlier than the one before it */
  | 'time-backwards'
  /** a sample time equal to the one before it */
  | 'time-repeated'
  /** slower than this software can judge timing with */
  | 'rate-too-low'
  /** faster than this software was checked with, or times in another unit than the header says */
  | 'rate-too-high'
  /** a line without an end: not a table of samples, or a damaged one */
  | 'line-too-long'
  /** no rows of numbers under one another: see `surae look` */
  | 'no-table'
  /** a file that the recipe does not fit: see what differs, and make a recipe for it */
  | 'unlike-recipe'
  /** the recipe does not say how many samples a second there are: say it */
  | 'rate-unknown'
  /** rows of more than one person, or of more than one recording: say which part is meant */
  | 'several-parts'
  /** a long recording of which nobody said where the test is: say from when to when */
  | 'no-window'
  /** rows of another place in the file than rows belong: a text in the middle, or rows below the end */
  | 'stray-line'
  /** a question about the file is open: answer it */
  | 'not-answered'
  /** an answer to nothing that can be asked, or a word that is none of the answers: see those expected */
  | 'wrong-answer'
  /** fewer samples than a recording needs */
  | 'too-few-samples'
  /** a manifest without the column `file`: add it */
  | 'no-file-column'
  /** columns that do not make a table of ratings: see what was expected */
  | 'not-a-rating-table'
  /** columns of ratings in different units: bring them to one */
  | 'mixed-units'
  /** two values of the same subject and rater: keep one, none is chosen for you */
  | 'repeated-rating'
  /** a document that is not a recording of this software, or a damaged one: see the path */
  | 'invalid-document'
  /** a document written by a newer version: update the software */
  | 'newer-version'
  /** raw bytes that do not have the SHA-256 or the length written beside them: the document was altered */
  | 'hash-mismatch';

/** Where a refusal happened and what was wrong there. */
export interface RecordErrorDetails {
  /** name of the file as the caller gave it */
  readonly file?: string;
  /** line of the file, counted from 1 */
  readonly row?: number;
  /** name of the column as the header spells it, or its number when it has no name */
  readonly column?: string;
  /** place in a document, as in `groups[0].timesS` */
  readonly path?: string;
  readonly expected: string;
  readonly actual: string;
}

/** A file or document that cannot become a recording: says where, what came and what was expected. */
export class RecordError extends Error {
  override readonly name = 'RecordError';
  readonly code: RecordErrorCode;
  readonly file: string | undefined;
  readonly row: number | undefined;
  readonly column: string | undefined;
  readonly path: string | undefined;
  readonly expected: string;
  readonly actual: string;

  constructor(code: RecordErrorCode, details: RecordErrorDetails, options?: { cause: unknown }) {
    const place = [
      details.file,
      details.row === undefined ? undefined : `row ${details.row}`,
      details.column === undefined ? undefined : `column "${details.column}"`,
      details.path,
    ].filter((part) => part !== undefined);
    const where = place.length === 0 ? '' : `${place.join(', ')}: `;
    super(`${where}expected ${details.expected}, got ${details.actual}`, options);
    this.code = code;
    this.file = details.file;
    this.row = details.row;
    this.column = details.column;
    this.path = details.path;
    this.expected = details.expected;
    this.actual = details.actual;
  }
}

/** What came, quoted and cut to a length that fits a message. */
export function quoted(text: string): string {
  return text.length > 40 ? `${JSON.stringify(text.slice(0, 40))}...` : JSON.stringify(text);
}
