import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packNumbers, unpackNumbers } from '../../packages/records/src/packed-numbers.ts';
import { runs } from '../support/runs.ts';

test('one is packed as the bytes of its IEEE 754 double, little end first', () => {
  // 1.0 is 0x3FF0000000000000. Source: IEEE 754, binary64.
  const data = Buffer.from([0, 0, 0, 0, 0, 0, 0xf0, 0x3f]).toString('base64');
  expect(packNumbers(Float64Array.of(1))).toEqual({ encoding: 'float64-le-base64', count: 1, data });
});

test('every double comes back as it was, the sign of zero included', () => {
  fc.assert(
    fc.property(fc.float64Array({ maxLength: 40 }), (numbers) => {
      const back = unpackNumbers(packNumbers(numbers));
      expect(back?.length).toBe(numbers.length);
      for (const [index, number] of numbers.entries()) expect(back?.[index]).toBe(number);
    }),
    runs(200, 2000),
  );
});

test('another count, half a double or other text is not read', () => {
  const packed = packNumbers(Float64Array.of(1, 2));
  expect(unpackNumbers({ ...packed, count: 1 })).toBeUndefined();
  expect(unpackNumbers({ ...packed, count: 3 })).toBeUndefined();
  expect(unpackNumbers({ ...packed, data: packed.data.slice(0, 8) })).toBeUndefined();
  expect(unpackNumbers({ ...packed, data: `${packed.data.slice(0, -1)}!` })).toBeUndefined();
});
