import { SAFETY_LIST, SAFETY_LIST_VERSION, type SafetyEntry } from '@surae/shared';
import type { SetChoice } from './set-choice.ts';
import type { TestKind } from './test-kind.ts';
import type { SafetyAnswer } from './visit.ts';

/** Why nobody may be tested. */
export type SafetyBlock =
  /** the list was not gone through in this visit */
  | 'not-asked'
  /** it was answered before its last line had been in view */
  | 'not-seen-whole'
  /** the answer was given to another version of the list */
  | 'other-list'
  /** the answer is of another day: what was clear then was not asked today */
  | 'another-day'
  /** a ticked line keeps from testing, and was not or cannot be overruled */
  | 'locked'
  /** a ticked line keeps from a maximal isometric effort, and this would be one */
  | 'no-maximal-isometric'
  /** a ticked line is not on the list of this version: what it asks is not known here */
  | 'unknown-line';

export interface SafetyGate {
  readonly allowed: boolean;
  /** what stands against testing somebody; may be there although a set that tests nobody is allowed */
  readonly why: readonly SafetyBlock[];
}

/** Lines that are gone through before a test. */
export const safetyLines: readonly SafetyEntry[] = SAFETY_LIST.filter(({ when }) => when === 'before');

/** Ticked lines that keep from testing: those without override, and those that no reason was given for. */
export function locksOf({ ticked, overridden }: Pick<SafetyAnswer, 'ticked' | 'overridden'>): SafetyEntry[] {
  const reasoned = new Set(overridden.filter(({ reason }) => reason.trim() !== '').map(({ id }) => id));
  return safetyLines.filter(({ id, effect, override }) => {
    if (effect !== 'do-not-test' || !ticked.includes(id)) return false;
    return override !== 'with-reason' || !reasoned.has(id);
  });
}

/** Ticked lines that go on with a note: cautions, and locks that were overruled. */
export function notesOf(answer: Pick<SafetyAnswer, 'ticked' | 'overridden'>): SafetyEntry[] {
  const locks = new Set(locksOf(answer).map(({ id }) => id));
  return safetyLines.filter(({ id }) => answer.ticked.includes(id) && !locks.has(id));
}

/** Whether an answer is of another day than now, both by the clock of the place; what was answered then says nothing of today. */
export function isOfAnotherDay({ at }: Pick<SafetyAnswer, 'at'>, nowIso: string): boolean {
  return at.slice(0, 10) !== nowIso.slice(0, 10);
}

/** Ticked lines that keep from a maximal isometric effort and from nothing else. */
export function isometricLocksOf({ ticked }: Pick<SafetyAnswer, 'ticked'>): SafetyEntry[] {
  return safetyLines.filter(({ id, effect }) => effect === 'no-maximal-isometric' && ticked.includes(id));
}

function blocksOf(safety: SafetyAnswer | null, nowIso: string, test: TestKind): SafetyBlock[] {
  if (safety === null) return ['not-asked'];
  const known = new Set(safetyLines.map(({ id }) => id));
  const why: SafetyBlock[] = [];
  if (!safety.seenWhole) why.push('not-seen-whole');
  if (safety.listVersion !== SAFETY_LIST_VERSION) why.push('other-list');
  if (isOfAnotherDay(safety, nowIso)) why.push('another-day');
  if (locksOf(safety).length > 0) why.push('locked');
  if (test === 'isometric' && isometricLocksOf(safety).length > 0) why.push('no-maximal-isometric');
  if (safety.ticked.some((id) => !known.has(id))) why.push('unknown-line');
  return why;
}

/**
 * Whether a set may begin. Somebody is tested only when the list was seen whole today and is clear; a simulated person and a
 * played recording test nobody, so they may run, but what stands against testing is told all the same. A maximal isometric
 * effort has lines of its own.
 */
export function mayTest(
  origin: SetChoice['origin'],
  safety: SafetyAnswer | null,
  nowIso: string,
  test: TestKind = 'heel-raise',
): SafetyGate {
  const why = blocksOf(safety, nowIso, test);
  const testsNobody = origin === 'simulated' || origin === 'replayed';
  return { allowed: testsNobody || why.length === 0, why };
}
