import { expect, test } from 'vitest';
import { ScreenWake } from '../../../apps/dashboard/src/live/screen-wake.ts';

/** A screen whose lock is given or refused, as the list says, one answer after the other. */
function keeper(...answers: readonly ('given' | 'refused')[]) {
  const left = [...answers];
  const released: number[] = [];
  const request = (): Promise<WakeLockSentinel> => {
    if (left.shift() === 'refused') return Promise.reject(new DOMException('low battery', 'NotAllowedError'));
    const release = (): Promise<void> => {
      released.push(left.length);
      return Promise.resolve();
    };
    return Promise.resolve({ release } as WakeLockSentinel);
  };
  return { wakeLock: { request }, released };
}

test('a screen that is kept on is let go again', async () => {
  const given = keeper('given');
  const wake = new ScreenWake(given);
  await wake.hold();
  expect([wake.isRefused, given.released.length]).toEqual([false, 0]);
  wake.release();
  expect(given.released).toHaveLength(1);
});

test('a refusal is known until it is given after all, or nobody wants it any more', async () => {
  const wake = new ScreenWake(keeper('refused', 'given', 'refused'));
  expect(wake.isRefused).toBe(false);
  await wake.hold();
  expect(wake.isRefused).toBe(true);
  await wake.hold();
  expect(wake.isRefused).toBe(false);
  await wake.hold();
  wake.release();
  expect(wake.isRefused).toBe(false);
});

test('a browser that cannot keep a screen on is one that refuses', async () => {
  const wake = new ScreenWake({});
  await wake.hold();
  expect(wake.isRefused).toBe(true);
});

test('a lock that comes when nobody wants it any more is let go', async () => {
  const given = keeper('given');
  const wake = new ScreenWake(given);
  const holding = wake.hold();
  wake.release();
  await holding;
  expect(given.released).toHaveLength(1);
});
