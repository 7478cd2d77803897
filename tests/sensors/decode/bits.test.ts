import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readBits, writeBits } from '../../../packages/sensors/src/decode/bits.ts';
import { runs } from '../../support/runs.ts';

test('whole bytes are little-endian or big-endian', () => {
  const bytes = Uint8Array.of(0x12, 0x34, 0x56, 0x78);
  expect(readBits(bytes, 0, 32, 'big')).toBe(0x12345678);
  expect(readBits(bytes, 0, 32, 'little')).toBe(0x78563412);
  expect(readBits(bytes, 8, 16, 'big')).toBe(0x3456);
  expect(readBits(bytes, 8, 16, 'little')).toBe(0x5634);
});

test('two numbers of 12 bits in three bytes, both ways', () => {
  // big: ABC DEF is AB CD EF; little: the low byte of ABC, then its top nibble below the low nibble of DEF
  const big = Uint8Array.of(0xab, 0xcd, 0xef);
  expect([readBits(big, 0, 12, 'big'), readBits(big, 12, 12, 'big')]).toEqual([0xabc, 0xdef]);
  const little = Uint8Array.of(0xbc, 0xfa, 0xde);
  expect([readBits(little, 0, 12, 'little'), readBits(little, 12, 12, 'little')]).toEqual([0xabc, 0xdef]);
});

/** The definition, bit by bit. */
function slowly(bytes: Uint8Array, atBit: number, bits: number, order: 'little' | 'big'): number {
  let value = 0n;
  for (let k = 0; k < bits; k += 1) {
    const at = atBit + k;
    const place = order === 'little' ? at % 8 : 7 - (at % 8);
    const bit = BigInt((bytes[Math.floor(at / 8)] >> place) & 1);
    value += bit << BigInt(order === 'little' ? k : bits - 1 - k);
  }
  return Number(value);
}

const place = fc.record({
  bytes: fc.uint8Array({ minLength: 9, maxLength: 12 }),
  atBit: fc.integer({ min: 0, max: 18 }),
  bits: fc.integer({ min: 1, max: 53 }),
  order: fc.constantFrom('little' as const, 'big' as const),
});

test('any bits from any bit on are those of the definition, and come back when they are written', () => {
  fc.assert(
    fc.property(place, ({ bytes, atBit, bits, order }) => {
      const value = readBits(bytes, atBit, bits, order);
      expect(value).toBe(slowly(bytes, atBit, bits, order));
      const written = new Uint8Array(bytes.length);
      writeBits(written, atBit, bits, order, value);
      expect(readBits(written, atBit, bits, order)).toBe(value);
      // nothing outside is touched
      writeBits(written, 0, atBit, order, 2 ** atBit - 1);
      expect(readBits(written, atBit, bits, order)).toBe(value);
    }),
    runs(500, 20_000),
  );
});
