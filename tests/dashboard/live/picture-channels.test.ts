import { expect, test } from 'vitest';
import { channelName, pictureChannels } from '../../../apps/dashboard/src/live/picture-channels.ts';

const axes = ['x', 'y', 'z'] as const;
const turning = axes.map((axis) => ({ quantity: 'angular-velocity', axis, unit: 'rad/s' }) as const);
const force = axes.map((axis) => ({ quantity: 'acceleration', axis, unit: 'm/s2' }) as const);

test('a picture shows all channels of one quantity, wherever they stand', () => {
  expect(pictureChannels([...turning, ...force]).map(({ index, label }) => [index, label])).toEqual([
    [3, 'acceleration x'],
    [4, 'acceleration y'],
    [5, 'acceleration z'],
  ]);
  expect(pictureChannels(turning).map(({ index }) => index)).toEqual([0, 1, 2]);
  expect(pictureChannels([])).toEqual([]);
});

test('a channel without an axis is called by its quantity', () => {
  expect(channelName({ quantity: 'force', axis: null })).toBe('force');
});
