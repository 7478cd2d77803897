import {
  adoptedCharacteristics,
  type Decoded,
  type Decoder,
  openLayout,
  packetDecoder,
  packetEncoder,
} from '@surae/sensors';
import { describe, expect, test } from 'vitest';
import { decodedFeed } from '../../../packages/sensors/src/link/decoded-feed.ts';

/** A decoder that gives what it is told. */
function told(decoded: Decoded, nature: Partial<Decoder> = {}): Decoder {
  const channels = [
    { quantity: 'force', axis: null, unit: 'N' },
    { quantity: 'angle', axis: null, unit: 'rad' },
  ] as const;
  return { channels, sentUnits: ['N', 'rad'], counter: null, time: null, decode: () => decoded, ...nature };
}

const packet: Decoded = {
  kind: 'packet',
  counter: 12,
  timeS: 2.5,
  sampleCount: 3,
  channels: [
    { values: [1, null, 3], missing: [{ index: 1, cause: 'not-known', atByte: 4 }] },
    { values: [null, null, 6], missing: [0, 1].map((index) => ({ index, cause: 'not-finite', atByte: index })) },
  ],
};
const nature = { nominalRateHz: 100, samplesPerPacket: 3 };

describe('packets of a decoder', () => {
  test('of the open layout carry their counter of samples and their clock of microseconds', () => {
    const layout = openLayout({
      nominalRateHz: 80,
      channels: [{ quantity: 'force', axis: null, form: 'i16', mantissa: 1, exponent: -1 }],
    });
    const feed = decodedFeed(packetDecoder(layout), { nominalRateHz: 80, samplesPerPacket: null });
    expect(feed.numbering).toEqual({
      counter: { counts: 'samples', modulus: 65_536 },
      ticks: { tickS: 1e-6, modulus: 2 ** 32 },
      samplesPerPacket: null,
      nominalRateHz: 80,
    });
    const bytes = packetEncoder(layout)({ counter: 65_535, timeS: 4294.967_295, channels: [[12.5, null]] });
    expect(feed.read(bytes, 70)).toEqual({
      packets: [
        {
          counter: 65_535,
          deviceTicks: 2 ** 32 - 1,
          hostTimeMs: 70,
          channels: [{ quantity: 'force', axis: null, unit: 'N', samples: Float64Array.of(12.5, 0) }],
          withoutValue: [1],
        },
      ],
      refusedCount: 0,
    });
    expect(feed.read(bytes.subarray(0, 9), 70)).toEqual({ packets: [], refusedCount: 1 });
  });

  test('of an adopted characteristic carry one sample, no counter and no time', () => {
    const { layout } = adoptedCharacteristics.find(({ name }) => name === 'Force')!;
    const feed = decodedFeed(packetDecoder(layout), { nominalRateHz: null, samplesPerPacket: 1 });
    expect(feed.numbering).toEqual({ counter: null, ticks: null, samplesPerPacket: 1, nominalRateHz: null });
    // 0x00012345 = 74.565 N
    const { packets } = feed.read(Uint8Array.of(0x45, 0x23, 0x01, 0x00), 5);
    expect(packets).toMatchObject([
      { counter: null, deviceTicks: null, channels: [{ samples: Float64Array.of(74.565) }] },
    ]);
  });

  test('a sample that one channel lacks has no value in any', () => {
    const [first] = decodedFeed(told(packet), nature).read(new Uint8Array(1), 5).packets;
    expect(first.withoutValue).toEqual([0, 1]);
    expect(first.channels.map(({ samples }) => samples[2])).toEqual([3, 6]);
    expect([first.counter, first.deviceTicks]).toEqual([null, null]);
  });

  test('a time of the last sample is carried back to the first, over the end of the clock', () => {
    const timeOf = (timeS: number, marks: 'first' | 'last') =>
      decodedFeed(told({ ...packet, timeS }, { time: { marks, stepS: 1e-3, periodS: 65.536 } }), nature).read(
        new Uint8Array(1),
        0,
      ).packets[0].deviceTicks;
    expect(timeOf(2.5, 'first')).toBe(2500);
    expect(timeOf(2.5, 'last')).toBe(2480);
    expect(timeOf(0.005, 'last')).toBe(65_536 - 15);
  });

  test('numbers that never begin again, and a clock of uneven steps', () => {
    const endless = told(packet, {
      counter: { counts: 'packets', modulus: null },
      time: { marks: 'first', stepS: null, periodS: null },
    });
    const feed = decodedFeed(endless, nature);
    expect(feed.numbering.counter).toEqual({ counts: 'packets', modulus: 2 ** 52 });
    expect(feed.numbering.ticks).toEqual({ tickS: 1e-6, modulus: 2 ** 52 });
    expect(feed.read(new Uint8Array(1), 0).packets[0]).toMatchObject({ counter: 12, deviceTicks: 2_500_000 });
  });

  test('one without the number that it is placed by is refused, and a note is nothing', () => {
    const counter = { counts: 'packets', modulus: 256 } as const;
    const time = { marks: 'first', stepS: 1e-3, periodS: null } as const;
    const refused = (decoded: Decoded, of: Partial<Decoder>) =>
      decodedFeed(told(decoded, of), nature).read(new Uint8Array(1), 0).refusedCount;
    expect(refused({ ...packet, counter: null }, { counter })).toBe(1);
    expect(refused({ ...packet, timeS: null }, { time })).toBe(1);
    expect(refused({ ...packet, timeS: null }, { counter, time })).toBe(0);
    expect(refused({ kind: 'note', text: 'a;b' }, { counter })).toBe(0);
  });
});
