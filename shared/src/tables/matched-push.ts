import type { Entry } from '../entry.ts';

/** Share of the best push at which pain would be put side by side over time. */
export const MATCHED_PUSH: Entry & { readonly value: number } = {
  id: 'matched.push-share',
  version: '1',
  unit: '1',
  source: 'common practice, no source',
  mark: 'common-practice',
  value: 0.6,
};
