import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeBase64, encodeBase64 } from '../../packages/records/src/base64.ts';
import { runs } from '../support/runs.ts';

const encode = (text: string) => new TextEncoder().encode(text);

describe('base64', () => {
  test.each([
    // Source: RFC 4648, section 10.
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('of %j is %j, and back', (text, written) => {
    expect(encodeBase64(encode(text))).toBe(written);
    expect(decodeBase64(written)).toEqual(encode(text));
  });

  test('agrees with Node on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 100 }), (bytes) => {
        const text = encodeBase64(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64'));
        expect(decodeBase64(text)).toEqual(bytes);
      }),
      runs(200, 2000),
    );
  });

  test.each(['Zg', 'Zg=', 'Zh==', 'Zm9=', 'Z===', 'Zm 9v', 'Zm9v\n', 'Zm-_', '====', 'Zg==Zg==', 'Zmé='])(
    'is not %j: only what the encoder writes is read',
    (text) => {
      expect(decodeBase64(text)).toBeUndefined();
    },
  );

  test('text that is read is what the encoder writes for those bytes', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'AQgwZ9+/='), maxLength: 8 }), (text) => {
        const bytes = decodeBase64(text);
        if (bytes !== undefined) expect(encodeBase64(bytes)).toBe(text);
      }),
      runs(1000, 10_000),
    );
  });
});
