import { decodeBase64 } from './base64.ts';
import { documentFault, shownValue } from './document-fault.ts';
import { RecordError } from './errors.ts';
import { sha256Hex } from './hash.ts';
import { latestVersion, migrateDocument, recordingMigrations } from './migrations.ts';
import { type PackedNumbers, unpackNumbers } from './packed-numbers.ts';
import { siUnits } from './quantities.ts';
import { freezeRecording, type RawSource, type RecordedGroup, type Recording } from './recording.ts';
import { type RecordingDocument, recordingDocument } from './recording-document.ts';
import { gapsIn } from './timeline.ts';

/**
 * A recording out of a value that came from outside: an older version is migrated, a newer one refused, every part is
 * checked, and kept raw bytes must have the hash and the length written beside them.
 *
 * @throws {@link RecordError} `invalid-document` with the path of the fault, `newer-version`, `hash-mismatch`, and the
 * refusals of sample times
 */
export function parseRecordingDocument(value: unknown, file?: string): Recording {
  const at = file === undefined ? {} : { file };
  const document = validate(migrate(value, at), at);
  const groups = document.groups.map((group, index) => unpackGroup(group, `groups[${index}]`, at));
  return freezeRecording({
    source: unpackSource(document.source, at),
    groups,
    deviceNotes: document.deviceNotes,
    unusedColumns: document.unusedColumns,
  });
}

type At = { readonly file?: string };

function migrate(value: unknown, at: At): unknown {
  const expected = 'a recording document of this software';
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    const actual = value === null ? 'null' : Array.isArray(value) ? 'a list' : `a ${typeof value}`;
    throw new RecordError('invalid-document', { ...at, expected, actual });
  }
  const kind: unknown = 'kind' in value ? value.kind : undefined;
  if (kind !== 'surae-recording') {
    throw new RecordError('invalid-document', {
      ...at,
      path: 'kind',
      expected: '"surae-recording"',
      actual: shownValue(kind),
    });
  }
  const result = migrateDocument(value as Record<string, unknown>, recordingMigrations);
  if (result.type === 'success') return result.value;
  const latest = latestVersion(recordingMigrations);
  const versions = latest === 1 ? 'version 1' : `a version of 1 to ${latest}`;
  switch (result.reason) {
    case 'no-version':
      throw new RecordError('invalid-document', { ...at, path: 'version', expected: versions, actual: 'none' });
    case 'newer-version':
      throw new RecordError('newer-version', {
        ...at,
        path: 'version',
        expected: versions,
        actual: `${result.version}`,
      });
    case 'step-failed':
      throw new RecordError(
        'invalid-document',
        { ...at, expected: `content of version ${result.version}`, actual: 'something else' },
        { cause: result.cause },
      );
    default:
      return result.reason satisfies never;
  }
}

function validate(value: unknown, at: At): RecordingDocument {
  const result = recordingDocument.safeParse(value, { reportInput: true });
  if (result.success) return result.data;
  throw documentFault(result.error, at);
}

function unpackGroup(group: RecordingDocument['groups'][number], path: string, at: At): RecordedGroup {
  const timesS = unpack(group.timesS, `${path}.timesS`, at);
  const gaps = gapsIn(timesS, group.channels, { ...at, path: `${path}.timesS` });
  const channels = group.channels.map((channel, index) => {
    const samplesPath = `${path}.channels[${index}].samples`;
    const samples = unpack(channel.samples, samplesPath, at);
    if (samples.length !== timesS.length) {
      const expected = `${timesS.length} numbers, as many as times`;
      throw new RecordError('invalid-document', { ...at, path: samplesPath, expected, actual: `${samples.length}` });
    }
    requireUnit(channel.unit.si, siUnits[channel.quantity], `${path}.channels[${index}].unit.si`, at);
    return { ...channel, samples };
  });
  requireUnit(group.timeUnit.si, siUnits.time, `${path}.timeUnit.si`, at);
  return { timesS, timeUnit: group.timeUnit, channels, gaps };
}

function requireUnit(code: string, si: string, path: string, at: At): void {
  if (code === si) return;
  throw new RecordError('invalid-document', {
    ...at,
    path,
    expected: JSON.stringify(si),
    actual: JSON.stringify(code),
  });
}

function unpack(packed: PackedNumbers, path: string, at: At): Float64Array {
  const numbers = unpackNumbers(packed);
  if (numbers === undefined) {
    const expected = `${packed.count} doubles in base64`;
    throw new RecordError('invalid-document', {
      ...at,
      path: `${path}.data`,
      expected,
      actual: shownValue(packed.data),
    });
  }
  const index = numbers.findIndex((number) => !Number.isFinite(number));
  if (index >= 0) {
    const actual = `${numbers[index]} at index ${index}`;
    throw new RecordError('not-finite', { ...at, path, expected: 'finite numbers', actual });
  }
  return numbers;
}

function unpackSource(source: RecordingDocument['source'], at: At): RawSource {
  const { sha256, byteLength } = source;
  if (source.bytes === undefined) return { sha256, byteLength };
  const bytes = decodeBase64(source.bytes);
  if (bytes === undefined) {
    const actual = shownValue(source.bytes);
    throw new RecordError('invalid-document', { ...at, path: 'source.bytes', expected: 'bytes in base64', actual });
  }
  const found = sha256Hex(bytes);
  if (found !== sha256 || bytes.length !== byteLength) {
    const expected = `${byteLength} bytes with SHA-256 ${sha256}`;
    throw new RecordError('hash-mismatch', {
      ...at,
      path: 'source',
      expected,
      actual: `${bytes.length} with ${found}`,
    });
  }
  return { sha256, byteLength, bytes };
}
