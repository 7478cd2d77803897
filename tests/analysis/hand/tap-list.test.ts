import { InputError, TapList, takeTaps, tapsOf } from '@surae/analysis';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const group = (timesS: number[], changes: number[]) => ({
  timesS: Float64Array.from(timesS),
  channels: [{ quantity: 'tap', axis: null, samples: Float64Array.from(changes) }] as const,
});

test('a tap that is taken back stays in the list as taken back, and does not count', () => {
  const list = tapsOf(group([0, 2, 4, 4.5, 6, 7], [0, 1, 1, -1, 1, 0]));
  expect(list.count).toBe(2);
  expect(list.standing.map(({ atS }) => atS)).toEqual([2, 6]);
  expect(list.taps).toEqual([
    { atS: 2, takenBackAtS: null },
    { atS: 4, takenBackAtS: 4.5 },
    { atS: 6, takenBackAtS: null },
  ]);
});

test('two taken back one after the other are the last two that stood', () => {
  const list = tapsOf(group([1, 2, 3, 4, 5], [1, 1, 1, -1, -1]));
  expect(list.standing.map(({ atS }) => atS)).toEqual([1]);
});

test('nothing to take back, and a change that is none, are refused', () => {
  expect(() => tapsOf(group([1], [-1]))).toThrow(InputError);
  expect(() => tapsOf(group([1, 2, 3], [1, -1, -1]))).toThrow(InputError);
  expect(() => tapsOf(group([1], [2]))).toThrow(InputError);
  expect(() => tapsOf(group([2, 1], [1, 1]))).toThrow(InputError);
  expect(() => tapsOf({ timesS: Float64Array.of(1), channels: [] })).toThrow(InputError);
});

test('the count is the sum of the changes, however the stream is cut into blocks', () => {
  fc.assert(
    fc.property(fc.array(fc.boolean(), { maxLength: 60 }), fc.integer({ min: 1, max: 7 }), (wishes, size) => {
      let standing = 0;
      const changes = wishes.map((wantsTap) => {
        const change = wantsTap || standing === 0 ? 1 : -1;
        standing += change;
        return change;
      });
      const timesS = changes.map((_, i) => 1 + i);
      const list = new TapList();
      for (let from = 0; from < changes.length; from += size) {
        takeTaps(list, group(timesS.slice(from, from + size), changes.slice(from, from + size)));
      }
      expect(list.count).toBe(standing);
      expect(list.taps).toEqual(tapsOf(group(timesS, changes)).taps);
    }),
    runs(100, 1000),
  );
});
