import { sha256Hex } from '@surae/records';
import { RUN_FILE_LIMITS } from '@surae/shared';
import { gpxTracks } from './gpx-tracks.ts';
import { RunFileError } from './run-file-error.ts';
import { runOfTracks, type TrackRun } from './run-of-tracks.ts';

/** A run of a file, and by what the file is known again. No position is in it. */
export interface RunRead extends TrackRun {
  /** SHA-256 of the bytes of the file, in lower-case hexadecimal */
  readonly fileSha256: string;
}

/** Day of the calendar of this device at a time [ms]. */
export function deviceDay(ms: number): string {
  const at = new Date(ms);
  return new Date(Date.UTC(at.getFullYear(), at.getMonth(), at.getDate())).toISOString().slice(0, 10);
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new RunFileError('not-text', String(bytes.length));
  }
}

/** Refuses a file by its size alone, before it is read. */
export function checkSize(bytes: number): void {
  const most = RUN_FILE_LIMITS.bytesMost.value;
  if (bytes > most) throw new RunFileError('too-large', `${Math.ceil(bytes / 1_000_000)} MB`);
}

/**
 * The run of a GPX file of a watch or phone. Positions are read, summed and let go.
 *
 * @param bytes - of the file as it came [-]
 * @param dayHere - day of the calendar of this device at a time [ms]
 * @param told - is told how many signs of how many were read [1]
 * @returns the run, and the hash of the file
 * @throws {@link RunFileError}
 */
export function readRunFile(
  bytes: Uint8Array,
  dayHere: (ms: number) => string = deviceDay,
  told?: (done: number, total: number) => void,
): RunRead {
  checkSize(bytes.length);
  return { ...runOfTracks(gpxTracks(textOf(bytes), told), dayHere), fileSha256: sha256Hex(bytes) };
}
