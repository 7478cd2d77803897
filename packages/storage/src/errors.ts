/** Why something could not be kept or read. */
export type StorageErrorCode =
  /** the browser gives no room: free some, or save as a file */
  | 'full'
  /** the browser gives no store, as in some private windows: save as a file */
  | 'unavailable'
  /** the store was written by a newer version: update the software */
  | 'newer-version'
  /** another window uses an older version: close it */
  | 'blocked'
  /** the stream was closed before */
  | 'already-closed'
  /** what is kept does not match its hash */
  | 'altered'
  | 'failed';

/** A store that could not do what it was asked. */
export class StorageError extends Error {
  override readonly name = 'StorageError';
  readonly code: StorageErrorCode;

  constructor(code: StorageErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}
