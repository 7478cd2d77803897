import type { Side } from '@surae/analysis';
import { pullSetOf } from './pull-events.ts';
import { secondsBetween } from './rest.ts';
import type { TestKind } from './test-kind.ts';
import type { Visit } from './visit.ts';
import { setOf } from './visit-events.ts';

/** Least rest between two different tests of the same leg [s]. Common practice, no source. */
export const betweenTestsS = 300;

/** What the same leg did before, in the other test of this visit. */
export interface EarlierTest {
  readonly test: TestKind;
  /** from its stop until now; null when the times cannot be read [s] */
  readonly agoS: number | null;
}

/** The other test of the same leg, when it was stopped before; undefined when there was none. */
export function earlierTest(visit: Visit, side: Side, test: TestKind, nowIso: string): EarlierTest | undefined {
  const other = test === 'heel-raise' ? 'isometric' : 'heel-raise';
  const stoppedAt = (other === 'heel-raise' ? setOf(visit, side) : pullSetOf(visit, side))?.stoppedAt;
  return stoppedAt == null ? undefined : { test: other, agoS: secondsBetween(stoppedAt, nowIso) };
}

/** Rest of a leg between its two tests as it was taken; null when it had one test, or the times cannot be read [s]. */
export function restBetweenTestsS(visit: Visit, side: Side): number | null {
  const set = setOf(visit, side);
  const pull = pullSetOf(visit, side);
  if (set?.stoppedAt == null || pull?.stoppedAt == null) return null;
  const rests = [secondsBetween(set.stoppedAt, pull.begunAt), secondsBetween(pull.stoppedAt, set.begunAt)];
  const rest = Math.max(...rests.map((one) => one ?? Number.NaN));
  return Number.isFinite(rest) && rest >= 0 ? rest : null;
}
