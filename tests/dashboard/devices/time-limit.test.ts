import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { withinTime } from '../../../apps/dashboard/src/devices/time-limit.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A promise that is settled by hand. */
function byHand<T>() {
  let resolve!: (value: T) => void;
  let reject!: (error: Error) => void;
  const promise = new Promise<T>((yes, no) => {
    resolve = yes;
    reject = no;
  });
  return { promise, resolve, reject };
}

test('what comes in time is given, and leaves no timer', async () => {
  const work = byHand<number>();
  const limited = withinTime(work.promise, 1000, 'Connecting');
  await vi.advanceTimersByTimeAsync(999);
  work.resolve(7);
  expect(await limited).toBe(7);
  expect(vi.getTimerCount()).toBe(0);
});

test('an error that comes in time is given as it is', async () => {
  const work = byHand<number>();
  const limited = withinTime(work.promise, 1000, 'Connecting');
  const failed = expect(limited).rejects.toThrow('broken');
  work.reject(new Error('broken'));
  await failed;
  expect(vi.getTimerCount()).toBe(0);
});

test('after the limit it is no answer, and what comes then is handed over as late', async () => {
  const work = byHand<number>();
  const late = vi.fn();
  const limited = withinTime(work.promise, 1000, 'Connecting', late);
  const failed = expect(limited).rejects.toMatchObject({
    code: 'no-answer',
    message: 'Connecting: no answer within 1000 ms',
  });
  await vi.advanceTimersByTimeAsync(1000);
  await failed;
  expect(late).not.toHaveBeenCalled();
  work.resolve(7);
  await vi.advanceTimersByTimeAsync(0);
  expect(late).toHaveBeenCalledExactlyOnceWith(7);
});

test('an error that comes too late disturbs nobody', async () => {
  const work = byHand<number>();
  const limited = withinTime(work.promise, 10, 'Connecting');
  const failed = expect(limited).rejects.toMatchObject({ code: 'no-answer' });
  await vi.advanceTimersByTimeAsync(10);
  await failed;
  work.reject(new Error('too late'));
  await vi.advanceTimersByTimeAsync(0);
});
