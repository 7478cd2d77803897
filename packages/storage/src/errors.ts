/** Why something could not be kept or read. */
export type StorageErrorCode =
  /** no room is left: free some, or save as a file */
  | 'full'
  /** there is no store, as in some private windows, or no encryption on a page over plain http: save as a file */
  | 'unavailable'
  /** the store or the backup was written by a newer version: update the software */
  | 'newer-version'
  /** another window uses an older version: close it */
  | 'blocked'
  /** the stream was closed before */
  | 'already-closed'
  /** what is kept does not match its hash, or its seal was broken */
  | 'altered'
  /** neither the passphrase nor the recovery code opens it: try again */
  | 'wrong-passphrase'
  /** a recovery code that cannot have been printed: a sign is wrong, missing or in another place */
  | 'mistyped-code'
  /** the passphrase is too short */
  | 'short-passphrase'
  /** the store is encrypted and locked: open it with the passphrase */
  | 'locked'
  /** another window or program writes: this one reads, and writes once the other is closed */
  | 'written-elsewhere'
  /** the store was opened for reading */
  | 'read-only'
  /** the person was erased: nothing is kept of them any more */
  | 'erased'
  /** there is something in the place where a new store was asked for */
  | 'not-empty'
  /** there is no store in that place */
  | 'no-store'
  /** the file is no backup of this software */
  | 'no-backup'
  /** the backup is cut off or altered: nothing was restored */
  | 'damaged-backup'
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
