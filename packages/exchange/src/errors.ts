/** Why something cannot leave, or what left cannot be read again. */
export type ExchangeErrorCode =
  /** a table is not one: rows of other lengths, columns of one name, a cell of another kind */
  | 'bad-table'
  /** a file that was handed over is not what it should be */
  | 'bad-file'
  /** the bytes of a file do not match the list of checksums */
  | 'altered'
  /** a file of the bundle is missing */
  | 'missing-file'
  /** a newer version of the bundle than this software knows */
  | 'newer-version';

/** What was expected, what came, and where. */
export interface ExchangeErrorDetails {
  readonly file?: string;
  readonly row?: number;
  readonly column?: string;
  readonly expected: string;
  readonly actual: string;
}

function message({ file, row, column, expected, actual }: ExchangeErrorDetails): string {
  const place = [
    file,
    row === undefined ? undefined : `row ${row}`,
    column === undefined ? undefined : `column "${column}"`,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
  return `${place === '' ? '' : `${place}: `}expected ${expected}, got ${actual}`;
}

/** Something that cannot leave, or cannot be read again. */
export class ExchangeError extends Error {
  readonly code: ExchangeErrorCode;
  readonly details: ExchangeErrorDetails;

  constructor(code: ExchangeErrorCode, details: ExchangeErrorDetails, options?: ErrorOptions) {
    super(message(details), options);
    this.name = 'ExchangeError';
    this.code = code;
    this.details = details;
  }
}
