import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { browserClock, isoWithOffset } from '../../apps/dashboard/src/browser-clock.ts';

const instant = Date.UTC(2026, 2, 1, 8, 30, 0, 7);

describe('a time with its offset', () => {
  test.each([
    [0, '2026-03-01T08:30:00.007+00:00'],
    [60, '2026-03-01T09:30:00.007+01:00'],
    [-570, '2026-02-28T23:00:00.007-09:30'],
    [-30, '2026-03-01T08:00:00.007-00:30'],
    [345, '2026-03-01T14:15:00.007+05:45'],
  ])('of %s minutes', (offsetMinutes, text) => {
    const written = isoWithOffset(instant, offsetMinutes);
    expect(written).toBe(text);
    expect(Date.parse(written)).toBe(instant);
  });
});

describe('the clock of the browser', () => {
  beforeEach(() => {
    vi.useFakeTimers({ now: instant });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test('says the time of the wall, and it is the same instant', () => {
    expect(Date.parse(browserClock.isoNow())).toBe(instant);
  });

  test('calls back again and again until it is told to end', () => {
    const startMs = browserClock.nowMs();
    const calls: number[] = [];
    const end = browserClock.every(16, () => calls.push(browserClock.nowMs() - startMs));
    vi.advanceTimersByTime(50);
    end();
    vi.advanceTimersByTime(50);
    expect(calls).toEqual([16, 32, 48]);
  });
});
