import { LineSplitter, type StreamPiece } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const textOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes);

function split(text: string, cuts: readonly number[] = []): StreamPiece[] {
  const splitter = new LineSplitter();
  const pieces: StreamPiece[] = [];
  let from = 0;
  for (const size of cuts) {
    pieces.push(...splitter.push(bytesOf(text.slice(from, from + size))));
    from += size;
  }
  return [...pieces, ...splitter.push(bytesOf(text.slice(from))), ...splitter.end()];
}
const short = (pieces: StreamPiece[]): unknown[] =>
  pieces.map(({ kind, atByte, bytes }) => [kind, atByte, textOf(bytes)]);

test('lines end with LF, CR or both, and empty ones are left out', () => {
  expect(short(split('a\n1\r\n\r\n2\r3\n'))).toEqual([
    ['found', 0, 'a'],
    ['found', 2, '1'],
    ['found', 7, '2'],
    ['found', 9, '3'],
  ]);
});

test('a first line that may have lost its beginning is skipped, a header is not', () => {
  const [first, second] = split('2.5\n12.5\n');
  expect(first).toMatchObject({ kind: 'skipped', faults: [{ atByte: 0, expected: 'a line from its beginning' }] });
  expect(second).toMatchObject({ kind: 'found', atByte: 4 });
  expect(split('force [N]\n12.5\n').map(({ kind }) => kind)).toEqual(['found', 'found']);
  expect(split('# hello\n')).toMatchObject([{ kind: 'found' }]);
  // after a line end the next line is whole
  expect(split('\n12.5\n')).toMatchObject([{ kind: 'found' }]);
});

test('a last line without its end is skipped', () => {
  expect(split('a\n12.')[1]).toMatchObject({
    kind: 'skipped',
    atByte: 2,
    faults: [{ expected: 'the end of the line' }],
  });
});

test('a line that is longer than any is skipped to its end', () => {
  const pieces = split(`a\n${'x'.repeat(3000)}\n7\n`);
  expect(pieces.map(({ kind, atByte, bytes }) => [kind, atByte, bytes.length])).toEqual([
    ['found', 0, 1],
    ['skipped', 2, 1024],
    ['skipped', 1026, 1024],
    ['skipped', 2050, 952],
    ['found', 3003, 1],
  ]);
  expect(pieces.map((piece) => (piece.kind === 'skipped' ? piece.faults.length : null))).toEqual([null, 1, 0, 0, null]);
});

test('any split gives the same, and nothing but line ends is left out', () => {
  const line = fc.oneof(
    { weight: 9, arbitrary: fc.constantFrom('', '1.5', 'a,b', '\r', '-') },
    { weight: 1, arbitrary: fc.integer({ min: 1000, max: 2100 }).map((length) => 'y'.repeat(length)) },
  );
  const text = fc.array(fc.tuple(line, fc.constantFrom('\n', '\r\n', '\r', ''))).map((parts) => parts.flat().join(''));
  fc.assert(
    fc.property(text, fc.array(fc.integer({ min: 0, max: 700 }), { maxLength: 30 }), (all, sizes) => {
      const whole = split(all);
      expect(short(split(all, sizes))).toEqual(short(whole));
      expect(whole.map(({ bytes }) => textOf(bytes)).join('')).toBe(all.replace(/[\r\n]/g, ''));
      for (const { atByte, bytes } of whole) expect(all.slice(atByte, atByte + bytes.length)).toBe(textOf(bytes));
    }),
    runs(100, 10_000),
  );
});
