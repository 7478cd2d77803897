import type { TestKind } from './test-kind.ts';
import type { Visit } from './visit.ts';

const kinds: readonly TestKind[] = ['heel-raise', 'isometric'];

/** The tests of a visit in the order in which they were chosen; heel raises until something else is chosen. */
export function testsOf({ tests }: Pick<Visit, 'tests'>): readonly TestKind[] {
  return tests === undefined || tests.length === 0 ? ['heel-raise'] : tests;
}

/** Whether something of a test was begun that counts. */
export function isBegun({ sets, pulls = [] }: Pick<Visit, 'sets' | 'pulls'>, test: TestKind): boolean {
  return (test === 'heel-raise' ? sets : pulls).some(({ setAside }) => !setAside);
}

/** The tests after one was chosen: it takes the place of one that was not begun, or is added; each is done once a visit. */
export function afterChoice(visit: Visit, test: TestKind): readonly TestKind[] {
  const begun = testsOf(visit).filter((one) => isBegun(visit, one));
  return begun.includes(test) ? testsOf(visit) : [...begun, test];
}

/** A test that can still be added to a visit; null when all were chosen. */
export function openTest(visit: Pick<Visit, 'tests'>): TestKind | null {
  return kinds.find((kind) => !testsOf(visit).includes(kind)) ?? null;
}

/** Whether a visit goes on without any test: its result was passed before anything of a test was ever begun. */
export function isUntested({ sets, pulls = [], resultSeen }: Pick<Visit, 'sets' | 'pulls' | 'resultSeen'>): boolean {
  return resultSeen === true && sets.length === 0 && pulls.length === 0;
}
