import type { Protocol } from '@surae/shared';

/** Why the protocol is over, as far as count and time can tell. */
export type SetLimit = 'fixed-count' | 'duration' | 'cap';

/** Whether count or time has reached what the protocol sets; the tester decides. */
export function reachedLimit(
  count: number,
  timeS: number,
  { fixedCount, duration, repetitionCap }: Protocol['parameters'],
): SetLimit | undefined {
  const reached = (value: number, limit: number | null): boolean => limit !== null && value >= limit;
  if (reached(count, fixedCount.value)) return 'fixed-count';
  if (reached(timeS, duration.value)) return 'duration';
  return reached(count, repetitionCap.value) ? 'cap' : undefined;
}
