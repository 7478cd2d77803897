import { readFileSync } from 'node:fs';
import {
  parseRecordingDocument,
  RecordError,
  type RecordingDocument,
  readRecording,
  recordingToDocument,
} from '@surae/records';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packNumbers } from '../../packages/records/src/packed-numbers.ts';
import { fixturePath } from '../support/fixture.ts';
import { runs } from '../support/runs.ts';

const heel = readFileSync(fixturePath('recordings/made/heel-three-raises.csv'));

/** A good document that a test may spoil. */
const good = (): RecordingDocument => structuredClone(recordingToDocument(readRecording(heel, { keepBytes: true })));

function refuse(value: unknown): RecordError {
  try {
    parseRecordingDocument(value, 'r.json');
  } catch (error) {
    if (error instanceof RecordError) return error;
    throw error;
  }
  throw new Error('was accepted');
}

describe('a recording document', () => {
  test('that is good is accepted, frozen, and not changed', () => {
    const document = good();
    const recording = parseRecordingDocument(document);
    expect(recording).toEqual(readRecording(heel, { keepBytes: true }));
    expect(Object.isFrozen(recording.groups[0].channels[0].unit)).toBe(true);
    expect(document).toEqual(good());
  });

  test.each<[string, unknown, string | undefined, string]>([
    ['null', null, undefined, 'got null'],
    ['a list', [], undefined, 'got a list'],
    ['text', 'recording', undefined, 'got a string'],
    ['another kind', { ...good(), kind: 'recipe' }, 'kind', 'expected "surae-recording", got "recipe"'],
    ['no kind', { version: 1 }, 'kind', 'got nothing'],
    ['no version', { kind: 'surae-recording' }, 'version', 'expected version 1, got none'],
    ['no group', { ...good(), groups: [] }, 'groups', 'at least 1, got a list of 0'],
    ['a missing key', { ...good(), deviceNotes: undefined }, 'deviceNotes', 'a value of type array, got nothing'],
    ['a strange key', { ...good(), person: 'P1' }, '', 'only the keys of the schema, got "person"'],
    ['a note that is no text', { ...good(), deviceNotes: ['a', 7] }, 'deviceNotes[1]', 'a value of type string, got 7'],
    [
      'a hash in capitals',
      { ...good(), source: { sha256: 'AB', byteLength: 1 } },
      'source.sha256',
      'text that matches',
    ],
  ])('with %s is refused by its path', (_, value, path, words) => {
    const error = refuse(value);
    expect(error.code).toBe('invalid-document');
    expect(error.path).toBe(path);
    expect(error.message).toContain(words);
    expect(error.message.startsWith('r.json')).toBe(true);
  });

  test('of a newer version is refused as such', () => {
    const error = refuse({ ...good(), version: 2, groups: 'something new' });
    expect(error.code).toBe('newer-version');
    expect(error.message).toBe('r.json, version: expected version 1, got 2');
  });

  test.each<[string, (document: RecordingDocument) => void, string, string, string]>([
    [
      'fewer samples than times',
      ({ groups }) => {
        groups[0].channels[0].samples = packNumbers(new Float64Array(399));
      },
      'invalid-document',
      'groups[0].channels[0].samples',
      'expected 400 numbers, as many as times, got 399',
    ],
    [
      'a wrong count',
      ({ groups }) => {
        groups[0].timesS.count = 401;
      },
      'invalid-document',
      'groups[0].timesS.data',
      'expected 401 doubles in base64',
    ],
    [
      'NaN among its samples',
      ({ groups }) => {
        groups[0].channels[0].samples = packNumbers(new Float64Array(400).fill(Number.NaN, 7, 8));
      },
      'not-finite',
      'groups[0].channels[0].samples',
      'got NaN at index 7',
    ],
    [
      'times that fall',
      ({ groups }) => {
        groups[0].timesS = packNumbers(Float64Array.from({ length: 400 }, (_, i) => (i === 9 ? 0 : i / 50)));
      },
      'time-backwards',
      'groups[0].timesS',
      'expected a time after 0.16 s, got 0 s',
    ],
    [
      'a quantity it does not know',
      ({ groups }) => {
        Object.assign(groups[0].channels[0], { quantity: 'heat' });
      },
      'invalid-document',
      'groups[0].channels[0].quantity',
      'expected one of "force", "heel-height"',
    ],
    [
      'an SI unit of another quantity',
      ({ groups }) => {
        groups[0].channels[0].unit.si = 'N';
      },
      'invalid-document',
      'groups[0].channels[0].unit.si',
      'expected "m", got "N"',
    ],
    [
      'times not in seconds',
      ({ groups }) => {
        groups[0].timeUnit.si = 'ms';
      },
      'invalid-document',
      'groups[0].timeUnit.si',
      'expected "s", got "ms"',
    ],
    [
      'raw bytes that were changed',
      ({ source }) => {
        source.bytes = source.bytes!.replace(/^..../, 'AAAA');
      },
      'hash-mismatch',
      'source',
      `expected ${heel.length} bytes with SHA-256`,
    ],
    [
      'a byte length that is not that of its bytes',
      ({ source }) => {
        source.byteLength += 1;
      },
      'hash-mismatch',
      'source',
      `got ${heel.length} with`,
    ],
    [
      'raw bytes that are not base64',
      ({ source }) => {
        source.bytes = '!';
      },
      'invalid-document',
      'source.bytes',
      'bytes in base64, got "!"',
    ],
  ])('with %s is refused', (_, spoil, code, path, words) => {
    const document = good();
    spoil(document);
    const error = refuse(document);
    expect({ code: error.code, path: error.path }).toEqual({ code, path });
    expect(error.message).toContain(words);
  });

  test('of any JSON is accepted or refused by a RecordError', () => {
    const keys = ['kind', 'version', 'source', 'groups', 'deviceNotes', 'unusedColumns'] as const;
    fc.assert(
      fc.property(
        fc.subarray([...keys], { minLength: 1 }),
        fc.array(fc.jsonValue(), { minLength: 6, maxLength: 6 }),
        (spoiled, values) => {
          const document: Record<string, unknown> = { ...good() };
          for (const key of spoiled) document[key] = values[keys.indexOf(key)];
          try {
            parseRecordingDocument(document);
          } catch (error) {
            expect(error).toBeInstanceOf(RecordError);
          }
        },
      ),
      runs(100, 2000),
    );
  });
});
