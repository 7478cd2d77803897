import { expect, test } from 'vitest';
import { joinBytes, longestSkipped, skippedPieces } from '../../../packages/sensors/src/decode/splitter.ts';

test('bytes one after the other', () => {
  expect([...joinBytes(Uint8Array.of(1), Uint8Array.of(), Uint8Array.of(2, 3))]).toEqual([1, 2, 3]);
});

test('a long run comes in pieces, each with the faults that lie in it', () => {
  const bytes = Uint8Array.from({ length: longestSkipped + 2 }, (_, i) => i & 255);
  const fault = (atByte: number) => ({ atByte, expected: 'a', actual: 'b' });
  const pieces = skippedPieces(bytes, 10, [fault(10), fault(9 + longestSkipped), fault(10 + longestSkipped)]);
  expect(pieces.map(({ atByte, bytes: part, faults }) => [atByte, part.length, faults.length])).toEqual([
    [10, longestSkipped, 2],
    [10 + longestSkipped, 2, 1],
  ]);
  expect(joinBytes(...pieces.map((piece) => piece.bytes))).toEqual(bytes);
  expect(skippedPieces(new Uint8Array(0), 0, [])).toEqual([]);
});
