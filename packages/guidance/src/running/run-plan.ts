import { RUNNING_NUMBERS, type RunningNumbers } from '@surae/shared';
import { GuidanceError } from '../guidance-error.ts';
import type { Held } from '../verdict.ts';

/** Running and walking in turn. */
export interface RunWalk {
  readonly parts: number;
  /** of each part [s] */
  readonly runS: number;
  /** between two parts, at least and at most [s] */
  readonly walkS: readonly [number, number];
  /** running in all: never more than was asked for [s] */
  readonly totalS: number;
}

/**
 * A session of running and walking in turn.
 *
 * @param mostS - running in all, at most [s]
 * @param numbers - see `RUNNING_NUMBERS` [unit of the number]
 * @returns equal parts of whole seconds; the first session is that of `firstS` [s]
 * @throws {@link GuidanceError} `not-an-answer` for less than a second a part
 *
 * Source: common practice, no source
 */
export function runWalk(
  mostS: number = RUNNING_NUMBERS.firstS.value,
  numbers: RunningNumbers = RUNNING_NUMBERS,
): RunWalk {
  const parts = numbers.parts.value;
  const runS = Math.floor(mostS / parts);
  if (!(runS >= 1 && Number.isFinite(runS))) throw new GuidanceError('not-an-answer', { fact: 'run', value: mostS });
  return { parts, runS, walkS: [numbers.walkLeastS.value, numbers.walkMostS.value], totalS: runS * parts };
}

/** What can go up from one session to the next; null is not known. */
export interface RunEffort {
  readonly durationS: number | null;
  readonly speedMps: number | null;
  /** metres up hill [m] */
  readonly climbM: number | null;
}

const rising = ['durationS', 'speedMps', 'climbM'] as const satisfies readonly (keyof RunEffort)[];

/** Whether at most one of duration, speed and hill goes up. */
export interface OneAtATime {
  readonly held: Held;
  readonly rises: readonly (keyof RunEffort)[];
  /** those of which it is not known whether they go up */
  readonly unknown: readonly (keyof RunEffort)[];
}

/**
 * Whether at most one of duration, speed and hill goes up from one session to the next.
 *
 * @param before - the session before [s, m/s, m]
 * @param next - the next one, as planned [s, m/s, m]
 * @returns the verdict, and what goes up [-]
 *
 * Source: common practice, no source
 */
export function oneAtATime(before: RunEffort, next: RunEffort): OneAtATime {
  const unknown = rising.filter((name) => before[name] === null || next[name] === null);
  const rises = rising.filter((name) => {
    const was = before[name];
    const will = next[name];
    return was !== null && will !== null && will > was;
  });
  if (rises.length > 1) return { held: 'no', rises, unknown };
  return { held: rises.length + unknown.length > 1 ? 'cannot-tell' : 'yes', rises, unknown };
}
