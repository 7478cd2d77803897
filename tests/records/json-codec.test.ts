import { readFileSync } from 'node:fs';
import {
  RecordError,
  type Recording,
  readRecording,
  readRecordingJson,
  recordingToDocument,
  writeRecordingJson,
} from '@surae/records';
import { describe, expect, test } from 'vitest';
import { fixturePath } from '../support/fixture.ts';

const encode = (text: string) => new TextEncoder().encode(text);
const heel = readFileSync(fixturePath('recordings/made/heel-three-raises.csv'));

describe('a recording written as JSON', () => {
  test('is the same when it is read again', () => {
    for (const keepBytes of [false, true]) {
      const recording = readRecording(heel, { side: 'right', placement: 'heel', keepBytes });
      expect(readRecordingJson(encode(writeRecordingJson(recording)))).toEqual(recording);
    }
  });

  test('keeps what only the software knows', () => {
    const recording = readRecording(heel, { placement: 'heel' });
    const detected: Recording = {
      ...recording,
      groups: recording.groups.map((group) => ({
        ...group,
        channels: group.channels.map((channel) => ({ ...channel, placementDetected: 'foot' as const })),
      })),
    };
    expect(readRecordingJson(encode(writeRecordingJson(detected)))).toEqual(detected);
  });

  test('may hold several groups, each with its own clock', () => {
    const slow = readRecording(heel);
    const fast = readRecording(readFileSync(fixturePath('recordings/made/platform-quiet-stance.csv')));
    const both: Recording = { ...slow, groups: [...slow.groups, ...fast.groups] };
    const again = readRecordingJson(encode(writeRecordingJson(both)));
    expect(again.groups.map(({ timesS }) => timesS.length)).toEqual([400, 300]);
    expect(again).toEqual(both);
  });

  test('carries kind and version, and only what the schema names', () => {
    const document = recordingToDocument(readRecording(heel));
    expect(document).toMatchObject({ kind: 'surae-recording', version: 1, source: { byteLength: heel.length } });
    expect(Object.keys(document).sort()).toEqual([
      'deviceNotes',
      'groups',
      'kind',
      'source',
      'unusedColumns',
      'version',
    ]);
    expect(Object.keys(document.groups[0]).sort()).toEqual(['channels', 'timeUnit', 'timesS']);
  });

  test('may begin with a byte order mark', () => {
    const recording = readRecording(heel);
    expect(readRecordingJson(encode(`\uFEFF${writeRecordingJson(recording)}`))).toEqual(recording);
  });
});

describe('other text is refused', () => {
  test.each([
    ['a table', heel, 'invalid-document'],
    ['half a document', encode(writeRecordingJson(readRecording(heel)).slice(0, 900)), 'invalid-document'],
    ['nothing', new Uint8Array(), 'invalid-document'],
    ['a picture', readFileSync(fixturePath('broken/picture.csv')), 'not-utf-8'],
  ])('%s', (_, bytes, code) => {
    try {
      readRecordingJson(bytes, 'r.json');
    } catch (error) {
      expect(error).toBeInstanceOf(RecordError);
      expect(error).toMatchObject({ code, file: 'r.json' });
      expect((error as RecordError).cause).toBeInstanceOf(Error);
      return;
    }
    throw new Error('was read');
  });
});
