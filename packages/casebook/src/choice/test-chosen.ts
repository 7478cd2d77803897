import type { TestKind } from '../test-kind.ts';
import type { ChoiceBlock } from './choice-block.ts';

/** A rule that stood against a test, and why a clinician went over it. */
export interface RuleGoneOver extends ChoiceBlock {
  readonly reason: string;
}

/** The test that was chosen for a visit, and what the choice stands on. */
export interface TestChosen {
  readonly test: TestKind;
  readonly protocolId: string;
  /** where the sensor sat the last time, where the test of that time was taken over; absent leaves it to the page of the set */
  readonly placement?: string;
  readonly from: 'last-time' | 'proposed' | 'other';
  /** rules that were gone over; absent where none stood against it */
  readonly goneOver?: readonly RuleGoneOver[];
}

/** A visit, as far as its choices go. */
interface WithChoice {
  readonly chosen?: readonly TestChosen[];
}

/** A visit, as far as it was begun. */
interface WithTests {
  readonly sets: readonly unknown[];
  readonly pulls?: readonly unknown[];
}

/** The tests that were chosen after one more choice: the latest one counts for a test. */
export function afterChosen(chosen: readonly TestChosen[] | undefined, next: TestChosen): readonly TestChosen[] {
  return [...(chosen ?? []).filter(({ test }) => test !== next.test), next];
}

/** What was chosen for a test of a visit; undefined where nothing was: visits before the question hold none. */
export function chosenFor({ chosen = [] }: WithChoice, test: TestKind): TestChosen | undefined {
  return chosen.find((one) => one.test === test);
}

/** Whether the question was answered, or was passed by: something was begun before it was ever asked. */
export function isChosen({ chosen = [], sets, pulls = [] }: WithChoice & WithTests): boolean {
  return chosen.length > 0 || sets.length > 0 || pulls.length > 0;
}
