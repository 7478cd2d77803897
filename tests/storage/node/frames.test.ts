import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameAt, frameOf, framesOf } from '../../../packages/storage/src/node/frames.ts';
import { runs } from '../../support/runs.ts';

const arbitraryContents = fc.array(fc.uint8Array({ maxLength: 60 }), { minLength: 1, maxLength: 6 });
const fileOf = (contents: readonly Uint8Array[]): Buffer => Buffer.concat(contents.map(frameOf));
const read = (bytes: Uint8Array): unknown[] => framesOf(bytes).frames.map(({ content }) => Buffer.from(content));

test('a frame is a mark, the length, half of the SHA-256, and the content', () => {
  const content = new TextEncoder().encode('abc');
  const hash = createHash('sha256').update('abc').digest().subarray(0, 16);
  expect(Buffer.from(frameOf(content))).toEqual(Buffer.concat([Buffer.from('sRF1\x03\0\0\0'), hash, content]));
});

test('frames come back in order, and a file that was cut anywhere gives those before', () => {
  fc.assert(
    fc.property(arbitraryContents, fc.nat(), (contents, seed) => {
      const file = fileOf(contents);
      expect(read(file)).toEqual(contents.map((one) => Buffer.from(one)));
      expect(framesOf(file)).toMatchObject({ damaged: [], end: file.length });
      const length = seed % file.length;
      const { frames, end } = framesOf(file.subarray(0, length));
      const whole = contents.filter((_one, i) => fileOf(contents.slice(0, i + 1)).length <= length);
      expect(frames).toHaveLength(whole.length);
      expect(end).toBe(fileOf(whole).length);
    }),
    runs(100, 1000),
  );
});

test('an altered byte costs the frame that it lies in, and no other', () => {
  fc.assert(
    fc.property(arbitraryContents, fc.nat(), fc.integer({ min: 1, max: 255 }), (contents, seed, turn) => {
      const file = fileOf(contents);
      const at = seed % file.length;
      file[at] ^= turn;
      let end = 0;
      const others = contents.filter((one) => {
        end += frameOf(one).length;
        return at < end - frameOf(one).length || at >= end;
      });
      expect(read(file)).toEqual(others.map((one) => Buffer.from(one)));
    }),
    runs(100, 1000),
  );
});

test('a content that holds a frame is one frame', () => {
  const inner = frameOf(Uint8Array.of(1, 2));
  expect(read(fileOf([inner]))).toEqual([Buffer.from(inner)]);
  expect(frameAt(inner, 1)).toBeUndefined();
});
