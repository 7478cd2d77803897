import type { SampleBlock } from '@surae/sensors';
import { expect, test } from 'vitest';
import { joinBlocks } from '../../../packages/sensors/src/loss/join-blocks.ts';

function block(firstIndex: number, values: readonly number[], isTimed = true): SampleBlock {
  const samples = Float64Array.from(values);
  return {
    firstIndex,
    deviceTimesS: isTimed ? samples.map((_, i) => (firstIndex + i) / 10) : null,
    hostTimeMs: 100 * firstIndex,
    channels: [
      { quantity: 'force', axis: null, unit: 'N', samples },
      { quantity: 'angle', axis: null, unit: 'rad', samples: samples.map((x) => -x) },
    ],
  };
}

test('blocks that follow one another become one, up to the next hole', () => {
  expect(joinBlocks([block(0, [1, 2]), block(2, [3]), block(4, [5]), block(5, [6, 7])])).toEqual([
    { ...block(0, [1, 2, 3]), hostTimeMs: 200 },
    { ...block(4, [5, 6, 7]), hostTimeMs: 500 },
  ]);
  expect(joinBlocks([])).toEqual([]);
});

test('a late block stands alone, and so does one without times', () => {
  const late: SampleBlock = { ...block(1, [9]), isLate: true };
  expect(joinBlocks([block(0, [1]), late, block(2, [2])])).toEqual([block(0, [1]), late, block(2, [2])]);
  expect(joinBlocks([block(0, [1]), block(1, [2], false)])).toHaveLength(2);
  expect(joinBlocks([block(0, [1], false), block(1, [2], false)])[0].deviceTimesS).toBeNull();
});
