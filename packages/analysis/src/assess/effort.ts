import type { Effort, SetMeasures, TestEnd } from './report.ts';
import type { TrialContext } from './request.ts';
import type { JudgingSettings } from './settings.ts';

/**
 * Whether the effort was one that shows capacity: the test ended in fatigue or by its rule, the exertion was full, and the
 * trace shows at least one sign of fatigue. What is not known leaves the answer open.
 *
 * @param measures - of the set [-]
 * @param end - how the test ended [-]
 * @param context - exertion and reason, as far as known [-]
 * @param settings - limits of the signs [-]
 * @returns the verdict, the signs that were seen, and why [-]
 *
 * Source: common practice, no source
 */
export function effortOf(
  measures: SetMeasures,
  end: TestEnd,
  context: TrialContext | undefined,
  settings: JudgingSettings,
): Effort {
  const signs: ('height-drop' | 'tempo-lengthening')[] = [];
  const { dropFraction } = measures.fatigue;
  if (dropFraction !== null && dropFraction >= settings.dropSign) signs.push('height-drop');
  const drift = measures.tempo.driftS;
  if (drift?.low !== null && drift?.low !== undefined && drift.low > 0) signs.push('tempo-lengthening');
  if (end.class !== 'unknown' && end.class !== 'capacity') return { good: 'no', signs, reason: 'not-a-capacity-test' };
  const exertion = context?.exertion;
  // a sign that could not be measured is not a sign that was absent
  const looked = dropFraction !== null && drift !== null && drift.low !== null;
  if (exertion !== undefined && exertion < settings.exertionLow && looked && signs.length === 0) {
    return { good: 'no', signs, reason: 'stopped-before-signs-of-fatigue' };
  }
  if (end.class === 'capacity' && exertion !== undefined && exertion >= settings.exertionFull && signs.length > 0) {
    return { good: 'yes', signs, reason: 'signs-of-fatigue' };
  }
  return { good: 'cannot_tell', signs, reason: 'too-little-known' };
}
