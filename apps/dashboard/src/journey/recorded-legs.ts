import type { Side } from '@surae/analysis';
import { pullSetOf, setOf, type TestKind, type Visit } from '@surae/casebook';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** The legs of which a test is recorded whole, where their names can still be changed: in a visit of both legs that is open. */
export function recordedLegs(visit: Visit, test: TestKind): readonly Side[] {
  if (visit.closed || visit.only !== undefined) return [];
  const of = test === 'heel-raise' ? setOf : pullSetOf;
  const sets = sides.map((side) => of(visit, side));
  // of a test that runs nothing is renamed
  if (sets.some((set) => set !== undefined && set.stoppedAt === null)) return [];
  return sides.filter((_side, at) => sets[at] !== undefined);
}
