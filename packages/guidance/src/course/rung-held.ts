import { TOLERANCE_RUNGS } from '@surae/shared';

/** What a try of a rung said; null was not told. */
export interface RungTried {
  readonly rung: string;
  /** by the calendar of the place */
  readonly day: string;
  /** worst pain, 0 to 10 */
  readonly pain: number | null;
  /** the morning after was at most what is allowed over its usual level */
  readonly morningPassed: boolean | null;
}

/** Where a leg stands on the ladder. */
export interface RungHeld {
  /** highest rung with pain up to the limit and a morning that passed, under every one that did not; null where there is none */
  readonly held: string | null;
  /** rungs of which the newest try cannot be told: the pain or the morning is missing */
  readonly open: readonly string[];
}

/**
 * The highest rung that a leg bears, by the newest try of each rung.
 *
 * @param tries - in any order; of one day the later in the list stands [-]
 * @param painLimit - pain up to which a rung is borne, of 10 [1]
 * @returns the rung, and those that are open [-]
 *
 * Source: ours; the order has its own source
 */
export function rungHeld(tries: readonly RungTried[], painLimit: number): RungHeld {
  const newest = new Map<string, RungTried>();
  for (const one of tries) {
    const known = newest.get(one.rung);
    if (known === undefined || known.day <= one.day) newest.set(one.rung, one);
  }
  let held: string | null = null;
  const open: string[] = [];
  for (const { code } of TOLERANCE_RUNGS) {
    const one = newest.get(code);
    if (one === undefined) continue;
    const isOver = one.pain !== null && one.pain > painLimit;
    if (isOver || one.morningPassed === false) break;
    if (one.pain === null || one.morningPassed === null) open.push(code);
    else held = code;
  }
  return { held, open };
}
