import type { HandoutLine, RunAtHome } from '@surae/exchange';
import { PLAN_BOUNDS, type PlanBound } from '@surae/shared';
import { type Press, pressed } from '../plan/plan-numbers.ts';

/** A run as it is being told: minutes or kilometres, and the worst pain of each leg. */
export interface RunDraft {
  readonly by: 'time' | 'way';
  /** minutes, or metres */
  readonly amount: number;
  readonly pain: Readonly<{ left?: number | null; right?: number | null }>;
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

/** The draft after a press on how long or how far. */
export function runPressed(draft: RunDraft, press: Press): RunDraft {
  return { ...draft, amount: pressed({ value: draft.amount, bound: boundOf(draft.by) }, press) ?? draft.amount };
}

/** Whether such a press changes anything. */
export function isRunPressable(draft: RunDraft, press: Press): boolean {
  return runPressed(draft, press).amount !== draft.amount;
}

/** The run that a draft is. */
export function runOf({ by, amount, pain: { left = null, right = null } }: RunDraft, day: string): RunAtHome {
  const isTime = by === 'time';
  return { day, durationS: isTime ? Math.round(60 * amount) : null, distanceM: isTime ? null : amount, left, right };
}
