import type { LightName } from '@surae/analysis';

/** One thing that is looked at before a test: whether it is in order, and what to do where it is not. */
export interface SetUpLight {
  /** what is looked at */
  readonly id: LightName;
  /** in a word or two, as it stands in the list */
  readonly name: string;
  readonly answer: 'yes' | 'no' | 'cannot-tell';
  /** one sentence: what was seen */
  readonly sentence: string;
  /** what to do; null where there is nothing to do */
  readonly fix: { readonly code: string; readonly text: string } | null;
}
