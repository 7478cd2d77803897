import type { Side } from '@surae/analysis';
import type { KneeToWall } from '@surae/casebook';
import { KNEE_TO_WALL_SCALES, KNEE_TO_WALL_TRIALS } from '@surae/shared';

/** A knee-to-wall test as far as it was chosen and stepped to; null was not taken. */
export interface ReachDraft {
  readonly side: Side | null;
  readonly unit: KneeToWall['unit'];
  readonly trials: readonly (number | null)[];
  readonly pain: number | null;
  readonly skipped: KneeToWall['skipped'];
}

/** Why a test is not kept as it is, in a code that has words. */
export type ReachProblem = 'side-missing' | 'trials-missing';

export type ReachProblems = Readonly<Partial<Record<'reachSide' | 'trials', ReachProblem>>>;

const noTrials: readonly null[] = Array.from({ length: KNEE_TO_WALL_TRIALS.value }, () => null);

export const emptyReach: ReachDraft = { side: null, unit: 'cm', trials: noTrials, pain: null, skipped: null };

/** The draft that a test would come from. */
export function reachDraftOf({ side, unit, trials, pain, skipped }: KneeToWall): ReachDraft {
  return { side, unit, trials: noTrials.map((none, at) => trials[at] ?? none), pain, skipped };
}

/** Trials that were taken, in their order. */
function taken({ trials }: ReachDraft): readonly number[] {
  return trials.filter((one) => one !== null);
}

/** What is missing, by its field. */
export function reachProblems(draft: ReachDraft): ReachProblems {
  return {
    ...(draft.side === null ? { reachSide: 'side-missing' } : {}),
    ...(draft.skipped === null && taken(draft).length === 0 ? { trials: 'trials-missing' } : {}),
  };
}

/** The test that a draft without problems is; one that was left out has no trials, whatever was stepped to before. */
export function reachOf(draft: ReachDraft, on: string): KneeToWall {
  const { side, unit, pain, skipped } = draft;
  const trials = skipped === null ? [...taken(draft)] : [];
  return { on, side: side ?? 'left', unit, trials, pain, skipped };
}

/** Another unit: what was stepped to in the one before is no number of this one. */
export function inUnit(draft: ReachDraft, unit: ReachDraft['unit']): ReachDraft {
  return unit === draft.unit ? draft : { ...draft, unit, trials: noTrials };
}

/** Where the stepper of a trial begins: at the trial before it, else where the rule says. */
export function beginOf({ trials, unit }: ReachDraft, at: number): number {
  return trials.slice(0, at).findLast((one) => one !== null) ?? KNEE_TO_WALL_SCALES[unit].begin.value;
}
