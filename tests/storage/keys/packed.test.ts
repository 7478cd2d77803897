import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pack, unpack } from '../../../packages/storage/src/keys/packed.ts';
import { runs } from '../../support/runs.ts';

test('what was packed is what comes out', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 600 }), fc.integer({ min: 1, max: 12 }), (bytes, times) => {
      const long = Uint8Array.from({ length: bytes.length * times }, (_, i) => bytes[i % bytes.length]);
      expect(unpack(pack(long))).toEqual(long);
    }),
    runs(100, 1000),
  );
});

test('what repeats itself gets smaller, and what does not gets one byte longer at most', () => {
  expect(pack(new Uint8Array(10_000)).length).toBeLessThan(100);
  const noise = crypto.getRandomValues(new Uint8Array(1000));
  expect(pack(noise)).toEqual(Uint8Array.of(0, ...noise));
});

test('a first byte that was never written is refused', () => {
  expect(() => unpack(Uint8Array.of(2, 1))).toThrow(RangeError);
  expect(() => unpack(new Uint8Array(0))).toThrow(RangeError);
});
