import type { TrialContext } from '@surae/analysis';
import type { Told } from './told-columns.ts';

/** What was told of a set, as far as the analysis of one set asks for it. */
export function trialContext({ end_reason: endReason, exertion, pain_peak: painPeak }: Told): TrialContext {
  return {
    ...(endReason === null ? {} : { endReason }),
    ...(exertion === null ? {} : { exertion }),
    ...(painPeak === null ? {} : { painPeak }),
  };
}
