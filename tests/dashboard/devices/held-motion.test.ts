import { expect, test } from 'vitest';
import { HeldMotion } from '../../../apps/dashboard/src/devices/held-motion.ts';
import { HandClock } from '../../support/hand-clock.ts';

const made = (hasTurning: boolean) =>
  new HeldMotion({
    kindName: 'Motion',
    deviceName: 'here',
    sign: 1,
    clock: new HandClock(),
    events: new EventTarget(),
    firstReadingMs: 1000,
    hasTurning,
  });

test('it offers what the device tells, and a source for each recording', async () => {
  expect(made(true).offers[0].map(({ quantity, axis }) => `${quantity} ${axis}`)).toEqual([
    'acceleration x',
    'acceleration y',
    'acceleration z',
    'angular-velocity x',
    'angular-velocity y',
    'angular-velocity z',
  ]);
  const motion = made(false);
  expect(motion.offers[0]).toHaveLength(3);
  const one = motion.makeSensor(0, 'foot');
  expect(one.description).toEqual({ origin: 'live', placement: 'foot', nominalRateHz: null });
  expect(motion.makeSensor(0, 'foot')).not.toBe(one);
  expect(motion.latestBytes()).toBeUndefined();
  await motion.release();
});
