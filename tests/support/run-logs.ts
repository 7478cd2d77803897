import type { RunDone, RunLog } from '@surae/guidance';

/** The day of March 2026, which may go beyond it on both sides. */
export function marchDay(day: number): string {
  return new Date(Date.UTC(2026, 2, day)).toISOString().slice(0, 10);
}

/** A run on a day of March 2026, by way [km] and by time [min]. */
export function runOn(day: number, km: number | null, min: number | null = null): RunDone {
  return {
    on: marchDay(day),
    distanceM: km === null ? null : km * 1000,
    durationS: min === null ? null : min * 60,
  };
}

/** A log that is kept from the beginning of the year to the end of June. */
export function keptLog(...runs: readonly RunDone[]): RunLog {
  return { runs, kept: [{ from: '2026-01-01', until: '2026-06-30' }] };
}
