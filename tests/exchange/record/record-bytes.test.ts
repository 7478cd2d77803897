import { createHash } from 'node:crypto';
import { bytesOf, lookAt, recordingOf } from '@surae/exchange';
import { encodeBlock } from '@surae/records';
import { expect, test } from 'vitest';

function stream(fromS: number, cut = 0): { pieces: Uint8Array[]; sha256: string | null } {
  const timesS = Float64Array.from({ length: 20 }, (_, i) => fromS + i / 100);
  const channels = [{ quantity: 'force', axis: null, unit: 'N', samples: timesS.map((timeS) => 2 * timeS) }] as const;
  const whole = encodeBlock({ firstIndex: 0, hostTimeMs: 0, deviceTimesS: timesS, channels });
  return { pieces: [whole, whole.slice(0, cut)], sha256: null };
}

const streams = new Map([
  ['a', stream(0)],
  ['b', stream(10, 12)],
  ['broken', { pieces: [Uint8Array.of(1, 2, 3)], sha256: 'x'.repeat(64) }],
]);
const read = (id: string) => Promise.resolve(streams.get(id));

test('streams one after the other are one recording; a block that was cut off is left out', async () => {
  const { groups } = await recordingOf(['a', 'b'], read);
  expect(groups).toHaveLength(1);
  expect(groups[0].timesS).toHaveLength(40);
  expect(groups[0].timesS[39]).toBeCloseTo(10.19, 9);
});

test('the hash is of the bytes that are kept, cut ends and all', async () => {
  const bytes = await bytesOf(['a', 'b'], read);
  const expected = createHash('sha256').update(bytes).digest('hex');
  expect(await lookAt(['a', 'b'], read)).toMatchObject({ sha256: expected, isReadable: true });
  expect(bytes).toHaveLength(
    [...streams.get('a')!.pieces, ...streams.get('b')!.pieces].reduce((sum, { length }) => sum + length, 0),
  );
});

test('what cannot be read is told, and what is not there has no hash', async () => {
  expect(await lookAt(['broken'], read)).toEqual({ sha256: 'x'.repeat(64), notes: [], isReadable: false });
  expect(await lookAt(['a', 'gone'], read)).toEqual({ sha256: null, notes: [], isReadable: false });
  expect(await lookAt([], read)).toEqual({ sha256: null, notes: [], isReadable: false });
});
