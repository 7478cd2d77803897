import type { ChannelNature } from '@surae/sensors';
import { expect, test } from 'vitest';
import { offerFor } from '../../../apps/dashboard/src/devices/offer-fit.ts';

const axes = ['x', 'y', 'z'] as const;
const of = (quantity: ChannelNature['quantity'], ...along: readonly ChannelNature['axis'][]): ChannelNature[] =>
  along.map((axis) => ({ quantity, axis, unit: '1' }));
const force = of('force', null);
const accelerations = of('acceleration', ...axes);
const both = [...accelerations, ...of('angular-velocity', ...axes)];

test('each place takes what it measures, the offer with most channels first', () => {
  expect(offerFor([of('angle', 'y'), accelerations, both], 'foot', 'heel-raise')).toBe(2);
  expect(offerFor([accelerations, force], 'platform', 'heel-raise')).toBe(1);
  expect(offerFor([of('heel-height', null)], 'heel', 'heel-raise')).toBe(0);
  expect(offerFor([accelerations], 'trunk', 'heel-raise')).toBe(0);
});

test('what does not measure it is not taken: one axis of three, a torque for raises, another quantity', () => {
  expect(offerFor([of('acceleration', null), of('acceleration', 'x', 'y')], 'foot', 'heel-raise')).toBeUndefined();
  expect(offerFor([of('torque', null)], 'platform', 'heel-raise')).toBeUndefined();
  expect(offerFor([force], 'heel', 'heel-raise')).toBeUndefined();
  expect(offerFor([], 'foot', 'heel-raise')).toBeUndefined();
});

test('a push needs a force at any place, or a torque where there is none', () => {
  expect(offerFor([of('torque', null), force], 'platform', 'isometric')).toBe(1);
  expect(offerFor([of('torque', null)], 'platform', 'isometric')).toBe(0);
  expect(offerFor([accelerations], 'inline', 'isometric')).toBeUndefined();
});
