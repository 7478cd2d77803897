import type { TestKind } from './test-kind.ts';

/** When the legs of a test were named otherwise. */
export interface SwapTold {
  readonly test: TestKind;
  readonly at: string;
}
