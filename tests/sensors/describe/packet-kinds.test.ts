import { readFileSync } from 'node:fs';
import {
  type BluetoothLink,
  bytesOfHex,
  type DecodedPacket,
  decodeByKind,
  decodersOf,
  readSensorDescription,
  type SensorDocument,
  type SerialLink,
  StreamReader,
} from '@surae/sensors';
import { expect, test } from 'vitest';

function example(name: string): SensorDocument {
  const answer = readSensorDescription(
    readFileSync(new URL(`../../../shared/sensors/examples/${name}`, import.meta.url), 'utf8'),
  );
  if (answer.kind === 'refused') throw new Error(JSON.stringify(answer.problems));
  return answer.sensor;
}
const values = (packet: DecodedPacket): unknown => packet.channels.map((channel) => channel.values);

test('the load cell, by hand', () => {
  const [characteristic] = (example('load-cell.json').link as BluetoothLink).characteristics;
  const decoders = decodersOf(characteristic);
  // number 7, 32768 ticks are 1 s, two samples: 1234 hundredths, not known
  const { which, decoded } = decodeByKind(decoders, bytesOfHex('42 00 07 00 80 00 02 00 04 D2 80 00 00 63')!);
  expect([which, decoded]).toMatchObject([0, { counter: 7, timeS: 1, sampleCount: 2 }]);
  expect(values(decoded as DecodedPacket)).toEqual([[12.34, null]]);
  expect(decodeByKind(decoders, bytesOfHex('43 00 07')!)).toMatchObject({
    which: null,
    decoded: { code: 'other-kind' },
  });
});

/** Bytes of numbers one above the other from bit 0 up, by arithmetic of its own. */
function packed(...numbers: [value: number, bits: number][]): Uint8Array {
  let all = 0n;
  let at = 0n;
  for (const [value, bits] of numbers) {
    all |= BigInt.asUintN(bits, BigInt(value)) << at;
    at += BigInt(bits);
  }
  return Uint8Array.from({ length: Number((at + 7n) / 8n) }, (_, i) => Number((all >> BigInt(8 * i)) & 255n));
}

test('the foot sensor, with both of its kinds', () => {
  const [characteristic] = (example('foot-sensor.json').link as BluetoothLink).characteristics;
  const decoders = decodersOf(characteristic);
  const header: [number, number][] = [
    [5, 4],
    [4095, 12],
    [2_500_000, 32],
  ];
  const first: [number, number][] = [
    [128, 12],
    [-64, 12],
    [-128, 12],
    [720, 14],
    [-8192, 14],
    [4, 14],
  ];
  const second: [number, number][] = [
    [0, 12],
    [0, 12],
    [2047, 12],
    [0, 14],
    [8191, 14],
    [0, 14],
  ];
  const { which, decoded } = decodeByKind(decoders, packed(...header, ...first, ...second));
  expect([which, decoded]).toMatchObject([0, { counter: 4095, timeS: 2.5, sampleCount: 2 }]);
  const g = 9.80665;
  const degree = Math.PI / 180;
  expect(values(decoded as DecodedPacket)).toEqual([
    [g, 0],
    [-g / 2, 0],
    [g, (-2047 / 128) * g],
    [180 * degree, 0],
    [-2048 * degree, 2047.75 * degree],
    [-1 * degree, 0],
  ]);
  // 0x5640 is 100 as a half float
  expect(decodeByKind(decoders, bytesOfHex('36 00 40 56')!)).toMatchObject({
    which: 1,
    decoded: { counter: 3, channels: [{ values: [100 * degree] }] },
  });
  expect(decodeByKind(decoders, bytesOfHex('36 00 40')!)).toMatchObject({
    which: 1,
    decoded: { kind: 'refused', code: 'too-short' },
  });
});

test('the string at the heel', () => {
  const { stream } = example('string-at-the-heel.json').link as SerialLink;
  const reader = new StreamReader(stream);
  const events = reader.push(
    Uint8Array.from('string gauge 1 ready\r\n17;250;12,5\r\n', (letter) => letter.charCodeAt(0)),
  );
  expect(events).toMatchObject([
    { decoded: { kind: 'note' } },
    { decoded: { kind: 'packet', counter: 17, timeS: 0.25, channels: [{ values: [0.0125] }] } },
  ]);
});
