import { expect, test } from 'vitest';
import { vectorChannels } from '../../packages/simulation/src/trace.ts';

test('three columns become the channels x, y and z of one quantity', () => {
  const [x, y, z] = [Float64Array.of(1), Float64Array.of(2), Float64Array.of(3)];
  expect(vectorChannels('acceleration', [x, y, z])).toEqual([
    { quantity: 'acceleration', axis: 'x', samples: x },
    { quantity: 'acceleration', axis: 'y', samples: y },
    { quantity: 'acceleration', axis: 'z', samples: z },
  ]);
});
