// What happens out of the ordinary, what has to be seen of it, and the tests that would fail without it. It stands beside the list of
// what goes wrong with sensors, pages and stores; a case is met where its words are made, which is seldom in a browser.
import { BEFORE_A_TEST } from './edge-cases/before-a-test.ts';
import { COMPARISONS } from './edge-cases/comparisons.ts';
import type { EdgeCase } from './edge-cases/edge-case.ts';
import { FILES_AND_RECORDS } from './edge-cases/files-and-records.ts';
import { SIGNALS } from './edge-cases/signals.ts';
import { TESTS_DONE } from './edge-cases/tests-done.ts';

/** The lists by what they are about. */
export const EDGE_CASE_LISTS: readonly Readonly<Record<string, EdgeCase>>[] = [
  BEFORE_A_TEST,
  SIGNALS,
  TESTS_DONE,
  COMPARISONS,
  FILES_AND_RECORDS,
];
