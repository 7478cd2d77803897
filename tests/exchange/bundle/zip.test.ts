import { unzipped, zipped } from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const file = fc.record({
  name: fc.stringMatching(/^[a-z]{1,3}(?:\/[a-z]{1,4}\.csv)?$/),
  bytes: fc.uint8Array({ maxLength: 300 }).map((bytes) => Uint8Array.from(bytes)),
});
const several = fc.uniqueArray(file, { selector: ({ name }) => name, maxLength: 5 });

test('the same files give the same bytes in any order, and come back by name', () => {
  fc.assert(
    fc.property(several, (files) => {
      const zip = zipped(files);
      expect(zipped([...files].reverse())).toEqual(zip);
      expect(unzipped(zip, 'x.zip')).toEqual([...files].sort((a, b) => (a.name < b.name ? -1 : 1)));
    }),
  );
});

test('the time of day tells nothing: 1 January 1980, as the format writes it', () => {
  const zip = zipped([{ name: 'a', bytes: Uint8Array.of(1) }]);
  // local header of the format: time at 10, date at 12, little-endian; (0 << 9) | (1 << 5) | 1 is the first day it knows
  expect([...zip.slice(10, 14)]).toEqual([0, 0, 0x21, 0]);
});

test('what is no zip is refused', () => {
  expect(() => unzipped(Uint8Array.of(1, 2, 3), 'x.zip')).toThrow('x.zip: expected a zip, got other bytes');
});
