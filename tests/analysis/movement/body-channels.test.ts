import { expect, test } from 'vitest';
import { bodyChannels } from '../../../packages/analysis/src/movement/body-channels.ts';
import type { Trace } from '../../../packages/analysis/src/trace.ts';

function trace(count: number, quantity: 'force' | 'acceleration'): Trace {
  const timesS = Float64Array.from({ length: count }, (_, i) => i / 100);
  const axes = quantity === 'force' ? ([null] as const) : (['z', 'x', 'y'] as const);
  const channels = axes.map((axis, i) => ({ quantity, axis, samples: new Float64Array(count).fill(i) }));
  return { groups: [{ timesS, channels }] };
}

test('the three axes come in the order x, y, z, whatever the order of the channels', () => {
  expect(bodyChannels(trace(20, 'acceleration'), 'trunk').axes.map((axis) => axis[0])).toEqual([1, 2, 0]);
});

test('a trunk recording without acceleration, or a platform without force, lacks a channel', () => {
  expect(() => bodyChannels(trace(20, 'force'), 'trunk')).toThrow('acceleration x, y and z in one group');
  expect(() => bodyChannels(trace(20, 'acceleration'), 'platform')).toThrow('a force channel');
});

test('seven samples are too few', () => {
  expect(() => bodyChannels(trace(7, 'force'), 'platform')).toThrow('n >= 8');
});
