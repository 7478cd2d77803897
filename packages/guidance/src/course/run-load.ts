import { RUN_LOADS } from '@surae/shared';

/** How the load of a run, or of jumps, on a tendon is graded. */
export type RunLoad = 'light' | 'medium' | 'high';

/**
 * How the load of a run on a tendon is graded, by the worst pain in it alone.
 *
 * @param pain - worst pain in the run, of 10; null was not told [1]
 * @returns null where it was not told, which is never light [-]
 *
 * Source: `RUN_LOADS`
 */
export function runLoad(pain: number | null): RunLoad | null {
  if (pain === null) return null;
  if (pain >= RUN_LOADS.high.value) return 'high';
  return pain >= RUN_LOADS.medium.value ? 'medium' : 'light';
}
