import { assess, defaultSettings } from '@surae/analysis';
import {
  decodeBlocks,
  decodeNotes,
  encodeBlock,
  encodeNote,
  RecordError,
  recordingFromStream,
  type StreamBlock,
} from '@surae/records';
import { FLOOR } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { describe, expect, test } from 'vitest';

function codeOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    return error instanceof RecordError ? error.code : String(error);
  }
  return 'none';
}

/** Ten samples of a height from an instant on. */
function manySamples(from: number): StreamBlock {
  const timesS = Float64Array.from({ length: 10 }, (_, i) => (from + i) / 50);
  return {
    firstIndex: from,
    deviceTimesS: timesS,
    hostTimeMs: from,
    channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples: timesS }],
  };
}

describe('the recording of a stream', () => {
  const { trace, subject } = simulateSet({ placement: 'foot', level: 'typical', seed: 11, count: 6 });
  const [group] = trace.groups;

  /** The stream as a source sends it, cut into blocks of a size. */
  function stream(size: number): Uint8Array[] {
    const pieces: Uint8Array[] = [];
    for (let from = 0; from < group.timesS.length; from += size) {
      const units = { acceleration: 'm/s2', 'angular-velocity': 'rad/s' } as const;
      pieces.push(
        encodeBlock({
          firstIndex: from,
          deviceTimesS: group.timesS.slice(from, from + size),
          hostTimeMs: from,
          channels: group.channels.map(({ quantity, axis, samples }) => ({
            quantity,
            axis,
            unit: units[quantity as keyof typeof units],
            samples: samples.slice(from, from + size),
          })),
        }),
      );
    }
    return pieces;
  }

  test('is assessed as the samples that were sent', () => {
    const recording = recordingFromStream(stream(17), { side: 'left', placement: 'foot', notes: ['simulated'] });
    expect(recording.groups[0].timesS).toEqual(group.timesS);
    expect(recording.groups[0].channels.map(({ samples }) => samples)).toEqual(
      group.channels.map((one) => one.samples),
    );
    const request = { placement: 'foot' as const, protocol: FLOOR, subject: { heelLeverM: subject.heelLeverM } };
    const settings = defaultSettings();
    const original = assess({ groups: [group] }, request, settings);
    expect(assess(recording, request, settings)).toEqual(original);
    expect(original.repetitions.length).toBeGreaterThan(3);
  });

  test('keeps the bytes as they were, with their hash, and says side, placement and notes', () => {
    const pieces = stream(40);
    const { source, groups, deviceNotes } = recordingFromStream(pieces, {
      side: 'left',
      placement: 'foot',
      notes: ['a'],
    });
    expect(source.byteLength).toBe(pieces.reduce((sum, { length }) => sum + length, 0));
    expect(decodeBlocks([source.bytes!])).toEqual(decodeBlocks(pieces));
    expect(deviceNotes).toEqual(['a']);
    expect(groups[0].channels[0]).toMatchObject({
      side: 'left',
      placementDeclared: 'foot',
      column: 'acceleration x',
      unit: { source: 'm/s2', si: 'm/s2' },
    });
  });

  test('lists the gap where blocks were lost', () => {
    const pieces = stream(50);
    const { groups } = recordingFromStream([...pieces.slice(0, 4), ...pieces.slice(6)]);
    expect(groups[0].gaps).toHaveLength(1);
    expect(groups[0].gaps[0]).toMatchObject({ fromS: group.timesS[199], toS: group.timesS[300] });
  });

  test('is refused without blocks, without times, and where blocks hold other channels', () => {
    const [first, ...rest] = [0, 2].map((firstIndex): StreamBlock => {
      const { channels, ...block } = manySamples(firstIndex);
      const deviceTimesS = block.deviceTimesS!.slice(0, 2);
      return { ...block, deviceTimesS, channels: [{ ...channels[0], samples: deviceTimesS }] };
    });
    const more = encodeBlock({ ...rest[0], channels: [...rest[0].channels, ...rest[0].channels] });
    const inOtherUnit = encodeBlock({ ...rest[0], channels: [{ ...rest[0].channels[0], unit: 'mm' }] });
    const untimed = encodeBlock({ ...rest[0], deviceTimesS: null });
    expect(codeOf(() => recordingFromStream([]))).toBe('too-few-samples');
    expect(codeOf(() => recordingFromStream([encodeBlock(first), untimed]))).toBe('no-time');
    expect(codeOf(() => recordingFromStream([encodeBlock(first), encodeBlock(first)]))).toBe('time-backwards');
    const ten = stream(20)[0];
    for (const other of [more, inOtherUnit]) {
      const late = decodeBlocks([other])[0];
      const pieces = [0, 10].map((at) => encodeBlock(manySamples(at)));
      const last = encodeBlock({ ...late, deviceTimesS: Float64Array.of(9, 10) });
      expect(codeOf(() => recordingFromStream([...pieces, last]))).toBe('invalid-document');
      expect(codeOf(() => recordingFromStream(pieces))).toBe('none');
    }
    expect(codeOf(() => recordingFromStream([ten]))).toBe('none');
  });

  test('puts samples that came too late where they belong, and knows them again', () => {
    const late = { ...manySamples(10), isLate: true } as const;
    const pieces = [manySamples(0), manySamples(20), late, manySamples(30)].map(encodeBlock);
    expect(decodeBlocks(pieces).map(({ isLate }) => isLate)).toEqual([undefined, undefined, true, undefined]);
    const { groups } = recordingFromStream(pieces);
    expect(groups[0].timesS).toEqual(Float64Array.from({ length: 40 }, (_, i) => i / 50));
    expect(groups[0].channels[0].samples).toEqual(groups[0].timesS);
    expect(groups[0].gaps).toEqual([]);
    // without its mark it would be a clock that runs back
    expect(codeOf(() => recordingFromStream([manySamples(0), manySamples(20), manySamples(10)].map(encodeBlock)))).toBe(
      'time-backwards',
    );
  });

  test('takes what is noted between blocks among its notes', () => {
    const pieces = [
      encodeBlock(manySamples(0)),
      encodeNote('rate: 50 Hz'),
      encodeBlock(manySamples(10)),
      encodeNote('müde'),
    ];
    expect(decodeBlocks(pieces)).toEqual([manySamples(0), manySamples(10)]);
    expect(decodeNotes(pieces)).toEqual(['rate: 50 Hz', 'müde']);
    expect(recordingFromStream(pieces, { notes: ['by hand'] }).deviceNotes).toEqual(['by hand', 'rate: 50 Hz', 'müde']);
    const altered = encodeNote('rate: 50 Hz');
    altered[altered.length - 3] ^= 1;
    expect(codeOf(() => decodeNotes([altered]))).toBe('invalid-document');
    expect(decodeNotes([encodeNote('cut off').subarray(0, 30)])).toEqual([]);
  });
});

describe('the recording of two sources', () => {
  const height = [manySamples(0), manySamples(10), manySamples(20)];
  const force = (from: number): StreamBlock => {
    const deviceTimesS = Float64Array.from({ length: 20 }, (_, i) => (from + i) / 100);
    const samples = deviceTimesS.map((_, i) => from + i);
    return {
      firstIndex: from,
      deviceTimesS,
      hostTimeMs: from,
      channels: [{ quantity: 'force', axis: null, unit: 'N', samples }],
      source: 1,
    };
  };
  /** As they arrive, one among the other; source 2 loses a block. */
  const written = [height[0], force(0), height[1], force(40), height[2], force(60)];
  const pieces = written.map(encodeBlock);

  test('holds each as a group with times of its own, the second on the clock of the first, and the bytes as they came', () => {
    const recording = recordingFromStream(pieces, {
      side: 'left',
      placement: 'heel',
      others: [{ side: 'left', placement: 'platform', clock: { offsetS: 0.25, rate: 1.5 } }],
    });
    expect(recording.groups).toHaveLength(2);
    const [first, second] = recording.groups;
    // what is on the line already is not touched
    expect(first.timesS).toEqual(Float64Array.from({ length: 30 }, (_, i) => i / 50));
    expect(first.channels[0]).toMatchObject({ quantity: 'heel-height', placementDeclared: 'heel' });
    expect(second.channels[0]).toMatchObject({ quantity: 'force', side: 'left', placementDeclared: 'platform' });
    // the second at 0.4 s of its own clock is at 0.25 + 1.5 x 0.4
    expect(second.timesS[20]).toBeCloseTo(0.85, 12);
    expect(second.timesS).toHaveLength(60);
    expect(second.channels[0].samples[20]).toBe(40);
    expect(second.gaps).toHaveLength(1);
    expect(first.gaps).toEqual([]);
    expect(decodeBlocks([recording.source.bytes!])).toEqual(written);
  });

  test('leaves out one whose clock is not known, and one of which nothing came; its bytes stay', () => {
    for (const clock of [null, { offsetS: 0, rate: 1 }]) {
      const given = clock === null ? pieces : height.map(encodeBlock);
      const recording = recordingFromStream(given, { others: [{ clock }] });
      expect(recording.groups.map(({ channels }) => channels[0].quantity)).toEqual(['heel-height']);
      expect(decodeBlocks([recording.source.bytes!])).toHaveLength(given.length);
    }
  });

  test('is refused where nobody told of a source, and where the first gave nothing', () => {
    expect(codeOf(() => recordingFromStream(pieces))).toBe('invalid-document');
    const alone = [force(0), force(20)].map(encodeBlock);
    expect(codeOf(() => recordingFromStream(alone, { others: [{ clock: { offsetS: 0, rate: 1 } }] }))).toBe(
      'too-few-samples',
    );
  });
});
