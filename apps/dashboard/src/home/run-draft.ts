import type { HandoutLine, RunAtHome } from '@surae/exchange';
import { PLAN_BOUNDS, type PlanBound } from '@surae/shared';
import { type Press, pressed } from '../plan/plan-numbers.ts';
import type { RunRead } from '../runs/run-file.ts';

/** A run as it is being told: minutes or kilometres, and the worst pain of each leg. */
export interface RunDraft {
  readonly by: 'time' | 'way';
  /** minutes, or metres */
  readonly amount: number;
  readonly pain: Readonly<{ left?: number | null; right?: number | null }>;
  /** as a file told it */
  readonly read?: Pick<RunRead, 'day' | 'movingS' | 'distanceM' | 'cadence' | 'fileSha256'>;
}

/** Bounds of what is told; nothing is no run. */
function boundOf(by: RunDraft['by']): PlanBound {
  const bound: PlanBound = by === 'time' ? PLAN_BOUNDS.runMin : PLAN_BOUNDS.runM;
  return { ...bound, least: bound.by };
}

/** A run begins at its limit, told as the limit is; where there is none to begin from, as a limit begins. */
export function emptyRun({ run }: Pick<HandoutLine, 'run'>): RunDraft {
  const by = run?.mostM == null ? 'time' : 'way';
  const { begin, least, most } = boundOf(by);
  const limit = by === 'time' ? (run?.mostS ?? 0) / 60 : (run?.mostM ?? 0);
  return { by, amount: limit < least ? begin : Math.min(limit, most), pain: {} };
}

/** The amount of a run that was read: whole minutes, or hundreds of metres. */
function readAmount(by: RunDraft['by'], { movingS, distanceM }: NonNullable<RunDraft['read']>): number {
  return by === 'time' ? Math.max(1, Math.round(movingS / 60)) : Math.max(100, 100 * Math.round(distanceM / 100));
}

/** The draft with what a file tells, filled in. */
export function runFilled(draft: RunDraft, read: NonNullable<RunDraft['read']>): RunDraft {
  return { ...draft, read, amount: readAmount(draft.by, read) };
}

/** The draft after a press on how long or how far. */
export function runPressed(draft: RunDraft, press: Press): RunDraft {
  return { ...draft, amount: pressed({ value: draft.amount, bound: boundOf(draft.by) }, press) ?? draft.amount };
}

/** Whether such a press changes anything. */
export function isRunPressable(draft: RunDraft, press: Press): boolean {
  return runPressed(draft, press).amount !== draft.amount;
}

/** The run that a draft is: of the day of its file, where one was read, else of today. */
export function runOf(draft: RunDraft, today: string): RunAtHome {
  const { by, amount, read } = draft;
  const { left = null, right = null } = draft.pain;
  const isTime = by === 'time';
  if (read !== undefined) {
    // what was not changed after reading stays to the second and the metre
    const isOwn = amount !== readAmount(by, read);
    return {
      day: read.day,
      durationS: isOwn && isTime ? Math.round(60 * amount) : read.movingS,
      distanceM: isOwn && !isTime ? amount : read.distanceM,
      cadencePerMin: read.cadence?.perMin ?? null,
      left,
      right,
    };
  }
  return {
    day: today,
    durationS: isTime ? Math.round(60 * amount) : null,
    distanceM: isTime ? null : amount,
    cadencePerMin: null,
    left,
    right,
  };
}
