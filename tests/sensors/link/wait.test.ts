import { expect, test } from 'vitest';
import { callAfter, within } from '../../../packages/sensors/src/link/wait.ts';
import { HandClock } from '../../support/hand-clock.ts';

test('calls once, unless it is called off', () => {
  const clock = new HandClock();
  const calls: string[] = [];
  callAfter(clock, 100, () => calls.push('one'));
  const off = callAfter(clock, 100, () => calls.push('two'));
  clock.move(99);
  expect(calls).toEqual([]);
  off();
  clock.move(1);
  clock.move(500);
  expect([calls, clock.running]).toEqual([['one'], 0]);
});

test('what is in time is given, what is not is refused, and no timer is left', async () => {
  const clock = new HandClock();
  const late = (): Error => new Error('too late');
  await expect(within(clock, 100, Promise.resolve(5), late)).resolves.toBe(5);
  await expect(within(clock, 100, Promise.reject(new Error('no')), late)).rejects.toThrow('no');
  const never = within(clock, 100, new Promise<void>(() => {}), late);
  clock.move(100);
  await expect(never).rejects.toThrow('too late');
  expect(clock.running).toBe(0);
});
