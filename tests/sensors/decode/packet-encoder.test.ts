import { type PacketLayout, packetEncoder } from '@surae/sensors';
import { expect, test } from 'vitest';

const layout: PacketLayout = {
  order: 'little',
  fields: [
    { kind: 'constant', form: 'u8', value: 3 },
    { kind: 'counter', form: 'u8', counts: 'packets' },
    { kind: 'time', form: 'u16', unit: 'ms' },
    { kind: 'count', form: 'u8' },
    {
      kind: 'samples',
      repeat: 'count',
      values: [
        {
          kind: 'channel',
          form: 'i16',
          quantity: 'force',
          axis: null,
          unit: 'N',
          scale: 0.1,
          offset: -5,
          notKnown: ['0x7FFF'],
        },
      ],
    },
  ],
};

test('bytes as a reader writes them by hand', () => {
  // 25.5 N is code 305 = 0x0131; 258 is 2 after 256; 70.0 s is 70000 - 65536 = 4464 = 0x1170 ms
  const bytes = packetEncoder(layout)({ counter: 258, timeS: 70, channels: [[25.5, null]] });
  expect([...bytes]).toEqual([3, 2, 0x70, 0x11, 2, 0x31, 0x01, 0xff, 0x7f]);
});

const faults: [string, PacketLayout, (number | null)[][], string][] = [
  ['a value that is too large', layout, [[4000]], 'channels[0][0]: expected a value whose code is -32768 to 32767'],
  ['the code for not known', layout, [[3271.7]], 'channels[0][0]: expected a value whose code is'],
  ['a channel too many', layout, [[1], [2]], 'channels: expected 1 channels, got 2'],
  [
    'more samples than the count holds',
    layout,
    [Array<number>(256).fill(0)],
    'channels[0]: expected below 256 samples, got 256',
  ],
];
test.each(faults)('%s is refused', (_, to, channels, message) => {
  expect(() => packetEncoder(to)({ channels })).toThrow(message);
});

test('a value that is not known needs a code', () => {
  const bare: PacketLayout = {
    order: 'big',
    fields: [
      {
        kind: 'samples',
        repeat: 2,
        values: [{ kind: 'channel', form: 'u8', quantity: 'angle', axis: 'x', unit: 'deg' }],
      },
    ],
  };
  const write = packetEncoder(bare);
  expect(() => write({ channels: [[0, null]] })).toThrow('channels[0][1]: expected a value, as the layout has no code');
  expect(() => write({ channels: [[0]] })).toThrow('channels[0]: expected 2 samples, got 1');
  expect(() => write({ channels: [[NaN, 0]] })).toThrow('channels[0][0]');
});

test('channels are as long as each other', () => {
  const two: PacketLayout = {
    order: 'big',
    fields: [
      {
        kind: 'samples',
        repeat: 'fill',
        values: [
          { kind: 'channel', form: 'f32', quantity: 'angle', axis: 'x', unit: 'deg' },
          { kind: 'channel', form: 'f32', quantity: 'angle', axis: 'y', unit: 'deg' },
        ],
      },
    ],
  };
  expect(() => packetEncoder(two)({ channels: [[1, 2], [1]] })).toThrow(
    'channels[1]: expected 2 samples, as the first channel, got 1',
  );
  expect(() => packetEncoder(two)({ channels: [[], []] })).toThrow(
    'channels[0]: expected at least one sample, got none',
  );
});
