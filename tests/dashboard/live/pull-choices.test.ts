import { STRAIGHT_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { holdsPulls, isAlike, pullProtocolOf } from '../../../apps/dashboard/src/live/pull-choices.ts';

test('a protocol is found by its id', () => {
  expect(pullProtocolOf(STRAIGHT_PULL.id)).toBe(STRAIGHT_PULL);
  expect(pullProtocolOf('nothing')).toBeUndefined();
});

test('a recording fits when it holds a force or a torque', () => {
  const of = (quantity: 'force' | 'torque' | 'heel-height') => ({
    groups: [{ timesS: new Float64Array(1), channels: [{ quantity, axis: null, samples: new Float64Array(1) }] }],
  });
  expect([of('force'), of('torque'), of('heel-height'), { groups: [] }].map(holdsPulls)).toEqual([
    true,
    true,
    false,
    false,
  ]);
});

test('legs are tested alike by the same protocol with the sensor at the same place', () => {
  const one = { protocolId: 'a', placement: 'platform' } as const;
  expect(isAlike(one, { ...one })).toBe(true);
  expect(isAlike(one, { ...one, placement: 'inline' })).toBe(false);
  expect(isAlike(one, { ...one, protocolId: 'b' })).toBe(false);
});
