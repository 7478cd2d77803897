import type { HandSettings } from '../settings.ts';

/** How far a count by hand can be trusted. */
export const handDefaults: HandSettings = {
  // repetitions, at 95 % [-]: common practice, no source (one to two; the larger)
  countMost: 2,
  // standard uncertainty of an instant [s]: common practice, no source (0.15 to 0.25; the larger)
  tapUS: 0.25,
  // taps that lie closer may be one [s]: common practice, no source (no repetition takes less)
  apartLeastS: 0.5,
  // mean period that is still shown [-]: ours
  periodRelativeUMost: 0.1,
};
