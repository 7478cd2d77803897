import { type FrameLayout, FrameSplitter, Framing, type StreamPiece } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const layout: FrameLayout = {
  marker: 'A5 5A',
  length: { kind: 'told', form: 'u8', order: 'little', longest: 60 },
  check: { kind: 'crc16-ccitt', order: 'little', covers: 'length-and-packet' },
};
const framing = new Framing(layout);
const frame = (...bytes: number[]): number[] => [...framing.write(Uint8Array.from(bytes))];

function split(bytes: number[], cuts: readonly number[] = [], to: FrameLayout = layout): StreamPiece[] {
  const splitter = new FrameSplitter(to);
  const pieces: StreamPiece[] = [];
  let from = 0;
  for (const size of cuts) {
    pieces.push(...splitter.push(Uint8Array.from(bytes.slice(from, from + size))));
    from += size;
  }
  return [...pieces, ...splitter.push(Uint8Array.from(bytes.slice(from))), ...splitter.end()];
}
const short = (pieces: StreamPiece[]): unknown[] => pieces.map(({ kind, atByte, bytes }) => [kind, atByte, [...bytes]]);

test('frames one after the other, with noise before, between and after', () => {
  const bytes = [1, 0xa5, 2, ...frame(7, 8), ...frame(), 9, ...frame(0xa5, 0x5a), 0xa5];
  expect(short(split(bytes))).toEqual([
    ['skipped', 0, [1, 0xa5, 2]],
    ['found', 3, [7, 8]],
    ['found', 10, []],
    ['skipped', 15, [9]],
    ['found', 16, [0xa5, 0x5a]],
    ['skipped', 23, [0xa5]],
  ]);
});

test('a damaged frame is skipped with its fault, and the next one is found', () => {
  const broken = frame(7, 8);
  broken[3] ^= 4;
  const [skipped, found] = split([...broken, ...frame(1)]);
  expect(found).toMatchObject({ kind: 'found', atByte: 7, bytes: Uint8Array.of(1) });
  expect(skipped).toMatchObject({ kind: 'skipped', atByte: 0, bytes: Uint8Array.from(broken) });
  expect(skipped).toHaveProperty('faults', [
    { atByte: 0, expected: expect.stringMatching(/^crc16-ccitt /) as string, actual: expect.any(String) as string },
  ]);
});

test('a marker in noise that promises much does not swallow the frame behind it', () => {
  const bytes = [0xa5, 0x5a, 50, ...frame(1, 2, 3)];
  expect(short(split(bytes))).toEqual([
    ['skipped', 0, [0xa5, 0x5a, 50]],
    ['found', 3, [1, 2, 3]],
  ]);
  const [skipped] = split(bytes);
  expect(skipped).toMatchObject({
    faults: [{ atByte: 0, expected: 'a whole frame', actual: 'the end after 11 bytes' }],
  });
  expect(split([0xa5, 0x5a, 61, ...frame(1)])[0]).toMatchObject({
    faults: [{ expected: 'a length of 0 to 60 bytes', actual: '61' }],
  });
});

test('a frame may begin at the second byte of what looked like a marker', () => {
  const twin: FrameLayout = { ...layout, marker: 'A5 A5' };
  const whole = [...new Framing(twin).write(Uint8Array.of(1, 2))];
  // the length behind the false marker is A5, more than any packet has
  expect(short(split([0xa5, ...whole], [], twin))).toEqual([
    ['skipped', 0, [0xa5]],
    ['found', 1, [1, 2]],
  ]);
});

test('noise without end goes on in pieces, and is not held', () => {
  const splitter = new FrameSplitter(layout);
  const pieces = Array.from({ length: 30 }, () => splitter.push(new Uint8Array(100).fill(1))).flat();
  expect(pieces.map(({ atByte, bytes }) => [atByte, bytes.length])).toEqual([
    [0, 1024],
    [1024, 1024],
  ]);
});

const noise = fc.array(fc.oneof(fc.constantFrom(0xa5, 0x5a, 0, 3), fc.integer({ min: 0, max: 255 })), {
  maxLength: 40,
});
const packet = fc.array(fc.oneof(fc.constantFrom(0xa5, 0x5a), fc.integer({ min: 0, max: 255 })), { maxLength: 20 });
const stream = fc.array(
  fc.oneof(
    packet.map((bytes) => frame(...bytes)),
    noise,
    packet.map((bytes) => frame(...bytes).slice(0, -1)),
  ),
  { maxLength: 12 },
);
const cuts = fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 40 });

test('any split of any stream gives the same, and no byte is lost or made up', () => {
  const unchecked: FrameLayout = { ...layout, check: null };
  fc.assert(
    fc.property(stream, cuts, fc.boolean(), (parts, sizes, isChecked) => {
      const bytes = parts.flat();
      const to = isChecked ? layout : unchecked;
      const whole = split(bytes, [], to);
      expect(split(bytes, sizes, to)).toEqual(whole);
      let at = 0;
      for (const piece of whole) {
        expect(piece.atByte).toBe(at);
        const own = piece.kind === 'found' ? new Framing(to).write(piece.bytes) : piece.bytes;
        expect([...own]).toEqual(bytes.slice(at, at + own.length));
        at += own.length;
      }
      expect(at).toBe(bytes.length);
    }),
    runs(150, 20_000),
  );
});

test('every whole frame between noise that holds no marker is found', () => {
  const quiet = fc.array(fc.integer({ min: 0, max: 0xa4 }), { maxLength: 40 });
  fc.assert(
    fc.property(fc.array(fc.tuple(quiet, packet), { maxLength: 12 }), cuts, (parts, sizes) => {
      const bytes = parts.flatMap(([before, inside]) => [...before, ...frame(...inside)]);
      const found = split(bytes, sizes).filter(({ kind }) => kind === 'found');
      expect(found.map((piece) => [...piece.bytes])).toEqual(parts.map(([, inside]) => inside));
    }),
    runs(100, 10_000),
  );
});
