import { kindFeed, type PacketLayout, packetDecoder, packetEncoder } from '@surae/sensors';
import { expect, test } from 'vitest';

const layout = (mark: number, unit: 'N' | 'kN'): PacketLayout => ({
  order: 'little',
  fields: [
    { kind: 'constant', form: 'u8', value: mark },
    { kind: 'counter', form: 'u8', counts: 'packets' },
    {
      kind: 'samples',
      repeat: 1,
      values: [{ kind: 'channel', form: 'i16', quantity: 'force', axis: null, unit }],
    },
  ],
});
const layouts = [layout(7, 'N'), layout(8, 'kN')];
const [newtons, kilonewtons] = layouts.map(packetEncoder);
const nature = { nominalRateHz: 50, samplesPerPacket: 1 };

test('packets of the wanted kind are read, those of another are passed over, and those of none are refused', () => {
  const feed = kindFeed(layouts.map(packetDecoder), 1, nature);
  expect(feed.numbering).toMatchObject({ counter: { counts: 'packets', modulus: 256 }, nominalRateHz: 50 });
  const read = (bytes: Uint8Array) => feed.read(bytes, 3);
  expect(read(kilonewtons({ counter: 5, channels: [[2000]] })).packets).toMatchObject([
    { counter: 5, hostTimeMs: 3, channels: [{ samples: Float64Array.of(2000) }] },
  ]);
  expect(read(newtons({ counter: 5, channels: [[2]] }))).toEqual({ packets: [], refusedCount: 0 });
  expect(read(Uint8Array.of(9, 1, 0, 0))).toEqual({ packets: [], refusedCount: 1 });
  // of the wanted kind, and damaged
  expect(read(Uint8Array.of(8, 1, 0))).toEqual({ packets: [], refusedCount: 1 });
});

test('where a sensor sends one kind alone, another one is refused', () => {
  const feed = kindFeed([packetDecoder(layouts[0])], 0, nature);
  expect(feed.read(kilonewtons({ counter: 5, channels: [[1000]] }), 3)).toEqual({ packets: [], refusedCount: 1 });
});
