import type { Side } from '@surae/analysis';
import { isNewStart, type LegPast, newStartOf, type TestKind, type Visit } from '@surae/casebook';
import { startInFlare } from '../result/bilateral-view.ts';

/** A leg whose start was taken in a flare. */
export interface StartInFlare {
  readonly side: Side;
  /** when that start was taken, with the time of its place */
  readonly begunAt: string;
}

/** What there is to say of the test that others are held against. */
export type NewStartView =
  | { readonly kind: 'taken' }
  | { readonly kind: 'offered'; readonly legs: readonly StartInFlare[] }
  | { readonly kind: 'held'; readonly begunAt: string };

const sides = ['left', 'right'] as const satisfies readonly Side[];

/**
 * Whether a visit is the new start of a test, may become it, or is held against one; null where nothing is to be said. It is
 * offered where the start of a leg was taken in a flare and this test was not.
 */
export function newStartView(
  visit: Visit,
  earlier: readonly Visit[],
  test: TestKind,
  pasts: Readonly<Record<Side, Pick<LegPast<unknown>, 'alike' | 'now' | 'course'> | undefined>>,
): NewStartView | null {
  if (isNewStart(visit, test)) return { kind: 'taken' };
  const legs = sides.flatMap((side): StartInFlare[] => {
    const past = pasts[side];
    const first = past?.alike[0];
    if (past == null || first === undefined || past.course === null) return [];
    const isOffered = startInFlare(past) === 'start' && past.now.result.inFlare === false;
    return isOffered ? [{ side, begunAt: first.visit.begunAt }] : [];
  });
  if (legs.length > 0) return { kind: 'offered', legs };
  const start = newStartOf(earlier, test);
  return start === undefined ? null : { kind: 'held', begunAt: start.begunAt };
}
