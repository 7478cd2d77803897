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
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryTimes } from '../support/arbitraries.ts';
import { runs } from '../support/runs.ts';

const arbitraryBlock: fc.Arbitrary<StreamBlock> = fc
  .tuple(arbitraryTimes(0, 12), fc.boolean(), fc.integer({ min: 1, max: 3 }), fc.nat(100_000))
  .chain(([timesS, timed, columns, firstIndex]) =>
    fc
      .array(fc.array(fc.double(), { minLength: timesS.length, maxLength: timesS.length }), {
        minLength: columns,
        maxLength: columns,
      })
      .map((samples) => ({
        firstIndex,
        deviceTimesS: timed ? timesS : null,
        hostTimeMs: firstIndex / 3,
        channels: samples.map((values, k) => ({
          quantity: 'acceleration' as const,
          axis: (['x', 'y', 'z'] as const)[k],
          unit: 'm/s2',
          samples: Float64Array.from(values),
        })),
      })),
  );

/** Three blocks of two samples of a height. */
const blocks: StreamBlock[] = [0, 2, 4].map((firstIndex) => ({
  firstIndex,
  deviceTimesS: Float64Array.of(firstIndex / 50, (firstIndex + 1) / 50),
  hostTimeMs: 20 * firstIndex,
  channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples: Float64Array.of(0.01, firstIndex) }],
}));
const written = blocks.map(encodeBlock);
const lengths = written.map(({ length }) => length);
const whole = Uint8Array.from(written.flatMap((bytes) => [...bytes]));

function codeOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    return error instanceof RecordError ? error.code : String(error);
  }
  return 'none';
}

describe('blocks as bytes', () => {
  test('come back bit for bit, into whatever pieces the bytes were cut', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryBlock, { maxLength: 5 }),
        fc.array(fc.nat(4000), { maxLength: 6 }),
        (given, cuts) => {
          const all = Uint8Array.from(given.flatMap((block) => [...encodeBlock(block)]));
          const at = [0, ...cuts.map((cut) => Math.min(cut, all.length)).sort((a, b) => a - b), all.length];
          const pieces = at.slice(1).map((to, i) => all.subarray(at[i], to));
          expect(decodeBlocks(pieces)).toEqual(given);
        },
      ),
      runs(60, 1000),
    );
  });

  test('a block that was cut off at the end is left out, wherever it was cut', () => {
    for (let end = 0; end <= whole.length; end += 1) {
      const complete = end < lengths[0] ? 0 : end < lengths[0] + lengths[1] ? 1 : end < whole.length ? 2 : 3;
      expect([end, decodeBlocks([whole.subarray(0, end)])]).toEqual([end, blocks.slice(0, complete)]);
    }
  });

  test('one altered bit anywhere is refused, and never taken for a cut-off end', () => {
    for (let at = 0; at < whole.length; at += 1) {
      const altered = whole.slice();
      altered[at] ^= 1 << (at % 8);
      expect([at, codeOf(() => decodeBlocks([altered]))]).toEqual([at, 'invalid-document']);
    }
  });

  test('columns of different lengths are not written', () => {
    const wrong = { ...blocks[0], deviceTimesS: Float64Array.of(0, 1, 2) };
    expect(codeOf(() => encodeBlock(wrong))).toBe('invalid-document');
  });
});

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
    const [first, ...rest] = blocks;
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
});
