import {
  adoptedCharacteristics,
  checkLayout,
  type DecodedPacket,
  industrialMeasurementService,
  packetDecoder,
} from '@surae/sensors';
import { expect, test } from 'vitest';

// by hand from the definitions: sint32 little-endian times its resolution; 0x7FFFFFFF is "value is not known"
const vectors: [number, number[], (number | null)[]][] = [
  // Acceleration, 0.001 m/s2: 9807 = 0x264F; -1
  [0x2c06, [0x4f, 0x26, 0x00, 0x00], [9.807]],
  [0x2c06, [0xff, 0xff, 0xff, 0xff], [-0.001]],
  // Force, 0.001 N: 1 234 567 = 0x0012D687; the least, -2 147 483.648 N
  [0x2c07, [0x87, 0xd6, 0x12, 0x00], [1234.567]],
  [0x2c07, [0x00, 0x00, 0x00, 0x80], [-2147483.648]],
  [0x2c07, [0xff, 0xff, 0xff, 0x7f], [null]],
  // Linear Position, 1e-7 m: 100 mm is 1 000 000 = 0x000F4240
  [0x2c08, [0x40, 0x42, 0x0f, 0x00], [0.1]],
  // Torque, 0.01 N.m: -150 N.m is -15 000 = 0xFFFFC568
  [0x2c0b, [0x68, 0xc5, 0xff, 0xff], [-150]],
  [0x2c0b, [0xff, 0xff, 0xff, 0x7f], [null]],
  // Acceleration 3D, three of sint8, 0.01 of standard gravity: 100, -50, 127
  [0x2c1d, [0x64, 0xce, 0x7f], [9.80665, -0.5 * 9.80665, 1.27 * 9.80665]],
  // Precise Acceleration 3D, three of sint16, 0.001 of it: 1000 = 0x03E8, -1000 = 0xFC18, 0
  [0x2c1e, [0xe8, 0x03, 0x18, 0xfc, 0x00, 0x00], [9.80665, -9.80665, 0]],
];

test.each(vectors)('characteristic %s of %s', (number, bytes, expected) => {
  const adopted = adoptedCharacteristics.find(
    ({ characteristic }) => parseInt(characteristic.slice(0, 8), 16) === number,
  );
  const decoder = packetDecoder(adopted!.layout);
  const decoded = decoder.decode(Uint8Array.from(bytes)) as DecodedPacket;
  expect(decoded.channels.map(({ values }) => values[0])).toEqual(expected);
  expect(decoded.channels.flatMap(({ missing }) => missing.map(({ cause }) => cause))).toEqual(
    expected.flatMap((value) => (value === null ? ['not-known'] : [])),
  );
  expect(decoder.decode(Uint8Array.from(bytes.slice(1)))).toMatchObject({ kind: 'refused', code: 'too-short' });
  expect(decoder.decode(Uint8Array.from([...bytes, 0]))).toMatchObject({ kind: 'refused', code: 'too-long' });
});

test('none has a counter or a clock, each has its source', () => {
  expect(industrialMeasurementService).toMatch(/^0000185a-/);
  const numbers = adoptedCharacteristics.map(({ characteristic }) => characteristic.slice(4, 8));
  expect(numbers).toEqual(['2c06', '2c07', '2c08', '2c0b', '2c1d', '2c1e']);
  for (const { layout, source } of adoptedCharacteristics) {
    expect(checkLayout(layout)).toEqual([]);
    expect(packetDecoder(layout)).toMatchObject({ counter: null, time: null });
    expect(source).toContain('Bluetooth SIG');
  }
});
