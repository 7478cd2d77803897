/** What is wrong with a line of a backup, by its number from 1. */
export interface BackupProblem {
  readonly line: number;
  readonly code: /** it does not match its hash, or its seal was broken */
    | 'altered'
    /** lines are missing before it, or it stands twice or in another place */
    | 'out-of-place'
    /** the file ends before its end */
    | 'cut-off'
    /** something stands behind the end */
    | 'after-end'
    /** the bytes before the end are not those that were written */
    | 'other-bytes';
}

/** Things of one sort in a backup. */
export interface BackupCount {
  /** whole ones */
  readonly whole: number;
  /** ids of those that belong in it and are not whole, in order; those that were damaged before it was made are not among them */
  readonly missing: readonly string[];
}

/** What a backup holds, and whether all of it is whole. */
export interface BackupReport {
  readonly isWhole: boolean;
  readonly isEncrypted: boolean;
  readonly documents: BackupCount;
  readonly streams: BackupCount;
  /** whether the list of what belongs in it is whole: else more may be missing than is told */
  readonly isListWhole: boolean;
  /** ids of what was damaged or erased already when the backup was made */
  readonly lostBefore: readonly string[];
  readonly problems: readonly BackupProblem[];
  readonly bytes: number;
}

/** Something of a backup that was not taken, and why. */
export interface RefusedItem {
  readonly id: string;
  readonly why: 'conflict' | 'erased' | 'altered';
}

/** What became of a backup that was restored. */
export interface RestoreReport extends BackupReport {
  readonly added: number;
  readonly alreadyThere: number;
  readonly refused: readonly RefusedItem[];
}

/** A file that can be read as often as it is asked for. */
export type BackupSource = () => AsyncIterable<Uint8Array>;
