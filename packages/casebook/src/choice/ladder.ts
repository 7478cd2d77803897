import type { Side } from '@surae/analysis';
import { COMPARISON_RULES, type IrritabilityGrade, LADDER_RUNGS, type LadderRung } from '@surae/shared';

/** What was said of a rung: pain from 0 to 10; not attempted; or tried, and it could not be done. The last two are not the same. */
export type RungAnswer = number | 'not-done' | 'could-not';

/** What was said of one leg. */
export interface LegLadder {
  /** answers in the order of the rungs, as far as they were asked */
  readonly answers: readonly RungAnswer[];
  /** what could not be done is lost since a short time, and suddenly; null was not asked */
  readonly sudden: boolean | null;
}

/** What was tried on each leg before the tests. */
export type VisitLadder = Readonly<Record<Side, LegLadder>>;

/** Nothing was tried yet. */
export const noLadder: VisitLadder = {
  left: { answers: [], sudden: null },
  right: { answers: [], sudden: null },
};

/** How far a leg came. */
export interface LadderState {
  /** pain above which a leg stops, 0 to 10 */
  readonly limit: number;
  /** highest rung that was done with pain of at most the limit; null where there is none */
  readonly highest: LadderRung | null;
  /** the rung at which the leg stopped, and why; null where it did not */
  readonly stopped: { readonly rung: LadderRung; readonly why: 'pain' | 'could-not' } | null;
  /** the rung to try next; null once the leg stopped, or is through */
  readonly next: LadderRung | null;
  /** pain at each rung that was done, up to the stop */
  readonly pains: Readonly<Partial<Record<LadderRung, number>>>;
  /** rungs that were left out */
  readonly notDone: readonly LadderRung[];
  readonly sudden: boolean | null;
}

/** Pain above which a leg stops: less for a tendon of high irritability. */
export function ladderLimit(treatAs: IrritabilityGrade | null): number {
  return (treatAs === 'high' ? COMPARISON_RULES.painMostIrritable : COMPARISON_RULES.painMost).value;
}

/**
 * How far a leg came, up to its first rung above the limit or that could not be done. A rung that was left out stops nothing
 * and shows nothing.
 *
 * @param told - answers of the leg [-]
 * @param limit - pain above which it stops, 0 to 10 [-]
 * @returns the state [-]
 * Source: ours; rungs and limits have their own source in the shared data
 */
export function ladderState({ answers, sudden }: LegLadder, limit: number): LadderState {
  const rungs = LADDER_RUNGS.map(({ code }) => code);
  const isOver = (answer: RungAnswer | undefined): boolean =>
    answer === 'could-not' || (typeof answer === 'number' && answer > limit);
  const stopAt = answers.findIndex(isOver);
  const told = rungs.slice(0, stopAt < 0 ? answers.length : stopAt + 1);
  const of = (rung: LadderRung): RungAnswer | undefined => answers[rungs.indexOf(rung)];
  const pains = told.flatMap((rung) => {
    const answer = of(rung);
    return typeof answer === 'number' ? [[rung, answer] as const] : [];
  });
  return {
    limit,
    highest: told.findLast((rung) => of(rung) !== 'not-done' && !isOver(of(rung))) ?? null,
    stopped: stopAt < 0 ? null : { rung: rungs[stopAt]!, why: answers[stopAt] === 'could-not' ? 'could-not' : 'pain' },
    next: stopAt < 0 ? (rungs[answers.length] ?? null) : null,
    pains: Object.fromEntries(pains),
    notDone: told.filter((rung) => of(rung) === 'not-done'),
    sudden: stopAt >= 0 && answers[stopAt] === 'could-not' ? sudden : null,
  };
}

/** Whether a leg stopped at a rung or below it. */
export function stoppedBy({ stopped }: LadderState, rung: LadderRung): boolean {
  const at = (code: LadderRung): number => LADDER_RUNGS.findIndex((one) => one.code === code);
  return stopped !== null && at(stopped.rung) <= at(rung);
}

/** The answers of a leg after one more; what comes after a stop is not asked. */
export function answered(ladder: VisitLadder, side: Side, answer: RungAnswer): VisitLadder {
  return { ...ladder, [side]: { answers: [...ladder[side].answers, answer], sudden: null } };
}

/** The same without the last answer of a leg. */
export function takenBack(ladder: VisitLadder, side: Side): VisitLadder {
  return { ...ladder, [side]: { answers: ladder[side].answers.slice(0, -1), sudden: null } };
}
