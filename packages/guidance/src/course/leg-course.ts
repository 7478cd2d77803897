/** What was done with a leg on a day; null was not told. */
export interface SessionTold {
  /** by the calendar of the place */
  readonly day: string;
  /** the least of sets, repetitions and tempo done, of what was planned [1] */
  readonly shareDone: number | null;
  /** 0 to 10 */
  readonly painDuring: number | null;
  /** the worst in the hours after it, up to the night, 0 to 10 */
  readonly painAfter: number | null;
  readonly exertion: number | null;
  /** heavy raises were done */
  readonly heavy: boolean;
  /** bounces or hops were done */
  readonly impact: boolean;
}

/** How a leg was on a morning; null was not told. */
export interface MorningTold {
  readonly day: string;
  /** at the first steps, 0 to 10 */
  readonly pain: number | null;
  readonly stiffnessMin: number | null;
}

/** What is known of the course of one leg; of several entries of a day the last one stands. */
export interface LegCourse {
  /** days for which a session was planned */
  readonly planned: readonly string[];
  readonly sessions: readonly SessionTold[];
  readonly mornings: readonly MorningTold[];
  /** day since which the level of now is done: what led to it is not held against it once more; absent: the level never changed */
  readonly levelSince?: string;
  /** day since which the dose of now is done, with every change up or down; absent: it never changed */
  readonly doseSince?: string;
}

/** Entries by day number, those after a day left out. */
export function byDay<Told extends { readonly day: string }>(
  told: readonly Told[],
  number: (day: string) => number,
  until: number,
): ReadonlyMap<number, Told> {
  return new Map(told.map((one) => [number(one.day), one] as const).filter(([on]) => on <= until));
}
