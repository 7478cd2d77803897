import type { HostClock } from './contexts/capabilities.ts';

function two(value: number): string {
  return String(Math.floor(Math.abs(value))).padStart(2, '0');
}

/** A time with its offset from UTC, such as 2026-03-01T09:30:00.000+01:00. */
export function isoWithOffset(ms: number, offsetMinutes: number): string {
  const local = new Date(ms + offsetMinutes * 60_000).toISOString().slice(0, -1);
  const sign = offsetMinutes < 0 ? '-' : '+';
  return `${local}${sign}${two(offsetMinutes / 60)}:${two(Math.abs(offsetMinutes) % 60)}`;
}

/** The clock of the browser. */
export const browserClock: HostClock = {
  nowMs: () => performance.now(),
  isoNow: () => {
    const now = new Date();
    return isoWithOffset(now.getTime(), -now.getTimezoneOffset());
  },
  every: (intervalMs, call) => {
    const timer = setInterval(call, intervalMs);
    return () => clearInterval(timer);
  },
};
