import { type MatchedPain, matchedPain, type Unmatched } from '@surae/guidance';
import { type FlarePast, flarePast } from './flare-past.ts';
import { type LoadDiary, type LoadPast, loadDiary } from './load-diary.ts';
import { type PushPain, pushPains } from './matched-push.ts';
import { painTries } from './pain-tries.ts';
import { type RunViews, runViews } from './run-views.ts';

/** Most loads that pain is shown at: those with the newest pain. */
const mostLoads = 6;

/** What the diary says of load and of what came of it. */
export interface CourseLoad {
  /** null where nothing was planned or written down in these weeks */
  readonly diary: LoadDiary | null;
  readonly runs: readonly RunViews[];
  readonly flares: readonly FlarePast[];
  /** pain at loads that were done twice or more, the newest first */
  readonly matched: readonly MatchedPain[];
  /** loads beyond those that are shown [-] */
  readonly moreLoads: number;
  readonly unmatched: Unmatched;
  /** pain at a share of the best push, as far as pushes tell */
  readonly pushes: readonly PushPain[];
}

/** See {@link CourseLoad}; what lies after today is left out. */
export function courseLoad(past: LoadPast, today: string): CourseLoad {
  const diary = loadDiary(past, today);
  const from = diary?.days[0]?.on ?? today;
  const { series, unmatched } = matchedPain(painTries(past).filter(({ on }) => on <= today));
  const matched = series.filter(({ points }) => points.length > 1).slice(0, mostLoads);
  return {
    diary,
    runs: runViews(past, from, today),
    flares: flarePast(past, today),
    matched,
    moreLoads: series.length - matched.length,
    unmatched,
    pushes: pushPains(past, today),
  };
}
