import { encodeBase64 } from './base64.ts';
import { RecordError } from './errors.ts';
import { latestVersion, recordingMigrations } from './migrations.ts';
import { packNumbers } from './packed-numbers.ts';
import { parseRecordingDocument } from './parse-document.ts';
import type { Recording } from './recording.ts';
import type { RecordingDocument } from './recording-document.ts';
import { decodeUtf8 } from './text.ts';

/** The document of a recording at the present version. */
export function recordingToDocument(recording: Recording): RecordingDocument {
  const { sha256, byteLength, bytes } = recording.source;
  return {
    kind: 'surae-recording',
    version: latestVersion(recordingMigrations),
    source: { sha256, byteLength, ...(bytes === undefined ? {} : { bytes: encodeBase64(bytes) }) },
    groups: recording.groups.map((group) => ({
      timesS: packNumbers(group.timesS),
      timeUnit: group.timeUnit,
      channels: group.channels.map((channel) => ({ ...channel, samples: packNumbers(channel.samples) })),
    })),
    deviceNotes: [...recording.deviceNotes],
    unusedColumns: [...recording.unusedColumns],
  };
}

/** A recording as JSON text; reading it back gives every number exactly. */
export function writeRecordingJson(recording: Recording): string {
  return JSON.stringify(recordingToDocument(recording));
}

/**
 * The recording that a JSON file holds.
 *
 * @throws {@link RecordError} as {@link parseRecordingDocument}, and `not-utf-8` or `invalid-document` for other text
 */
export function readRecordingJson(bytes: Uint8Array, file?: string): Recording {
  const at = file === undefined ? {} : { file };
  const text = decodeUtf8(bytes, at).replace(/^\uFEFF/, '');
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (cause) {
    const actual = cause instanceof Error ? cause.message : 'other text';
    throw new RecordError('invalid-document', { ...at, expected: 'JSON', actual }, { cause });
  }
  return parseRecordingDocument(value, file);
}
