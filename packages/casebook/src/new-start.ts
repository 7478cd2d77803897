import type { TestKind } from './test-kind.ts';
import type { Visit } from './visit.ts';

/**
 * Somebody said of a visit whether later tests are held against it and no longer against what lies before it, as where the first
 * test was taken in a flare. Nothing that was recorded is changed, and it can be said anew.
 */
export interface NewStartTold {
  readonly kind: 'new-start';
  readonly test: TestKind;
  readonly taken: boolean;
}

/** The visit after it was told whether it is a new start of a test. */
export function afterNewStart(visit: Visit, { test, taken }: NewStartTold): Visit {
  const others = (visit.newStarts ?? []).filter((one) => one !== test);
  return { ...visit, newStarts: taken ? [...others, test] : others };
}

/** Whether later tests of this kind are held against this visit and none before it. */
export function isNewStart({ newStarts = [] }: Pick<Visit, 'newStarts'>, test: TestKind): boolean {
  return newStarts.includes(test);
}

/** The last visit that a later test is held against and none before it; undefined where there is none. */
export function newStartOf(earlier: readonly Visit[], test: TestKind): Visit | undefined {
  return earlier.findLast((one) => isNewStart(one, test));
}
