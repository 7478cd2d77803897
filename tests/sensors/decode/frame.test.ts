import { checkFrame, type FrameLayout, Framing, hexOf, PacketError } from '@surae/sensors';
import { expect, test } from 'vitest';

const told = (change: object = {}): FrameLayout => ({
  marker: 'A5 5A',
  length: { kind: 'told', form: 'u16', order: 'little', longest: 512 },
  check: { kind: 'crc16-ccitt', order: 'big', covers: 'packet' },
  ...change,
});
const digits = Uint8Array.from('123456789', (digit) => digit.charCodeAt(0));

test('a frame by hand', () => {
  const framing = new Framing(told());
  const frame = framing.write(digits);
  expect(hexOf(frame)).toBe('A5 5A 09 00 31 32 33 34 35 36 37 38 39 29 B1');
  expect(framing.read(frame)).toEqual({ kind: 'frame', packet: digits, byteLength: frame.length });
  expect(framing.read(frame.subarray(0, 14))).toEqual({ kind: 'open' });
  expect(framing.read(frame.subarray(0, 3))).toEqual({ kind: 'open' });
});

test('a check covers what the layout says', () => {
  const xor = (covers: 'packet' | 'length-and-packet' | 'all'): number =>
    new Framing(told({ check: { kind: 'xor8', order: 'big', covers } })).write(digits).at(-1)!;
  expect([xor('packet'), xor('length-and-packet'), xor('all')]).toEqual([0x31, 0x31 ^ 9, 0x31 ^ 9 ^ 0xa5 ^ 0x5a]);
});

test('a length may count more than the packet', () => {
  const framing = new Framing(
    told({ length: { kind: 'told', form: 'u8', order: 'big', extra: -4, longest: 20 }, check: null }),
  );
  expect(hexOf(framing.write(Uint8Array.of(7)))).toBe('A5 5A 05 07');
  expect(framing.read(Uint8Array.of(0xa5, 0x5a, 3, 7))).toMatchObject({
    kind: 'none',
    expected: 'a length of 0 to 20 bytes',
    actual: '-1',
  });
  expect(framing.read(Uint8Array.of(0xa5, 0x5a, 25, 7))).toMatchObject({ kind: 'none', actual: '21' });
  expect(() => framing.write(new Uint8Array(21))).toThrow(PacketError);
});

test('damage is seen', () => {
  const framing = new Framing(told({ length: { kind: 'fixed', bytes: 9 } }));
  const frame = framing.write(digits);
  frame[4] ^= 1;
  expect(framing.read(frame)).toMatchObject({ kind: 'none', actual: '29 B1' });
  expect(() => framing.write(new Uint8Array(8))).toThrow('packet: expected 9 bytes, got 8');
});

test('a layout that cannot be used is refused', () => {
  const paths = (change: object): string[] => checkFrame(told(change)).map(({ path }) => path);
  expect(paths({})).toEqual([]);
  expect(paths({ marker: '' })).toEqual(['marker']);
  expect(paths({ marker: '00 01 02 03 04 05 06 07 08' })).toEqual(['marker']);
  expect(paths({ length: { kind: 'fixed', bytes: 0 } })).toEqual(['length.bytes']);
  expect(paths({ length: { kind: 'told', form: 'u8', order: 'big', extra: 0.5, longest: 5000 } })).toEqual([
    'length.longest',
    'length.extra',
  ]);
  expect(() => new Framing(told({ marker: 'x' }))).toThrow('marker: expected 1 to 8 bytes');
});
