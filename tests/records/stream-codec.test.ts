import { decodeBlocks, encodeBlock, joinPieces, RecordError, type StreamBlock } from '@surae/records';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryTimes } from '../support/arbitraries.ts';
import { runs } from '../support/runs.ts';

const arbitraryBlock: fc.Arbitrary<StreamBlock> = fc
  .tuple(arbitraryTimes(0, 12), fc.boolean(), fc.integer({ min: 1, max: 3 }), fc.nat(100_000), fc.option(fc.nat(3)))
  .chain(([timesS, timed, columns, firstIndex, source]) =>
    fc
      .array(fc.array(fc.double(), { minLength: timesS.length, maxLength: timesS.length }), {
        minLength: columns,
        maxLength: columns,
      })
      .map((samples) => ({
        firstIndex,
        deviceTimesS: timed ? timesS : null,
        hostTimeMs: firstIndex / 3,
        ...(source === null ? {} : { source }),
        channels: samples.map((values, k) => ({
          quantity: 'acceleration' as const,
          axis: (['x', 'y', 'z'] as const)[k],
          unit: 'm/s2',
          samples: Float64Array.from(values),
        })),
      })),
  );

/** Three blocks of two samples of a height. */
const blocks: StreamBlock[] = [0, 2, 4].map((firstIndex) => ({
  firstIndex,
  deviceTimesS: Float64Array.of(firstIndex / 50, (firstIndex + 1) / 50),
  hostTimeMs: 20 * firstIndex,
  channels: [{ quantity: 'heel-height', axis: null, unit: 'm', samples: Float64Array.of(0.01, firstIndex) }],
}));
const written = blocks.map(encodeBlock);
const lengths = written.map(({ length }) => length);
const whole = Uint8Array.from(written.flatMap((bytes) => [...bytes]));

function codeOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    return error instanceof RecordError ? error.code : String(error);
  }
  return 'none';
}

describe('blocks as bytes', () => {
  test('come back bit for bit, into whatever pieces the bytes were cut', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryBlock, { maxLength: 5 }),
        fc.array(fc.nat(4000), { maxLength: 6 }),
        (given, cuts) => {
          const all = Uint8Array.from(given.flatMap((block) => [...encodeBlock(block)]));
          const at = [0, ...cuts.map((cut) => Math.min(cut, all.length)).sort((a, b) => a - b), all.length];
          const pieces = at.slice(1).map((to, i) => all.subarray(at[i], to));
          expect(decodeBlocks(pieces)).toEqual(given);
        },
      ),
      runs(60, 1000),
    );
  });

  test('a block that was cut off at the end is left out, wherever it was cut', () => {
    for (let end = 0; end <= whole.length; end += 1) {
      const complete = end < lengths[0] ? 0 : end < lengths[0] + lengths[1] ? 1 : end < whole.length ? 2 : 3;
      expect([end, decodeBlocks([whole.subarray(0, end)])]).toEqual([end, blocks.slice(0, complete)]);
    }
  });

  test('one altered bit anywhere is refused, and never taken for a cut-off end', () => {
    for (let at = 0; at < whole.length; at += 1) {
      const altered = whole.slice();
      altered[at] ^= 1 << (at % 8);
      expect([at, codeOf(() => decodeBlocks([altered]))]).toEqual([at, 'invalid-document']);
    }
  });

  test('columns of different lengths are not written', () => {
    const wrong = { ...blocks[0], deviceTimesS: Float64Array.of(0, 1, 2) };
    expect(codeOf(() => encodeBlock(wrong))).toBe('invalid-document');
  });
});

test('pieces stand one after the other; a stream without any is empty', () => {
  expect([...joinPieces([Uint8Array.of(1, 2), new Uint8Array(0), Uint8Array.of(3)])]).toEqual([1, 2, 3]);
  expect(joinPieces([])).toHaveLength(0);
});
