import type { TimeWindow } from '../live/min-max.ts';

/** Room of one second at least, so that two repetitions are told apart [px]; ours. */
const secondPx = 30;
/** No window is shorter [s]; ours. */
const shortestS = 8;
/** Where the cursor stands in a new window, from the side that it came from [-]. */
const lead = 0.2;

/** How much of a line is shown at once in so wide a picture [s]. */
export function windowLengthS(lengthS: number, widthPx: number): number {
  return Math.min(lengthS, Math.max(shortestS, widthPx / secondPx));
}

/** The stretch that is shown: as it was while the cursor is in it, else the one that the cursor went to. */
export function windowAround(
  cursorS: number,
  { fromS, toS }: TimeWindow,
  shownS: number,
  was: TimeWindow | undefined,
): TimeWindow {
  const isSame = was !== undefined && Math.abs(was.toS - was.fromS - shownS) < 1e-9;
  if (isSame && cursorS >= was.fromS && cursorS <= was.toS && was.fromS >= fromS && was.toS <= toS + 1e-9) return was;
  const back = was !== undefined && cursorS < was.fromS;
  const from = cursorS - (back ? 1 - lead : lead) * shownS;
  const start = Math.max(fromS, Math.min(toS - shownS, from));
  return { fromS: start, toS: start + shownS };
}
