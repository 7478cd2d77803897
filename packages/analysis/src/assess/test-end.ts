import type { EndReason, ProtocolParameters } from '@surae/shared';
import type { FaultEnd } from '../raises/end-rule.ts';
import type { TestEnd } from './report.ts';

/** What an end rule asks of a repetition; of one of which only the top is known, the top stands for start and end. */
export interface RaiseTimes {
  readonly startS: number | null;
  readonly topS: number;
  readonly endS: number | null;
}

const CLASS_OF: Readonly<Record<EndReason, TestEnd['class']>> = {
  fatigue: 'capacity',
  'heel-cannot-leave': 'capacity',
  'two-prompted-faults': 'capacity',
  pain: 'tolerance',
  'other-stop': 'incomplete',
  safety: 'incomplete',
  technical: 'incomplete',
  cap: 'censored',
  'fixed-count-done': 'probe',
  'trials-done': 'capacity',
};

/**
 * What kind of result an end makes a set: what the calf could do, what was tolerated, or neither.
 *
 * @param reason - why the test ended, as the tester recorded it [-]
 * @returns the class [-]
 *
 * Source: common practice, no source
 */
export function endClass(reason: EndReason): TestEnd['class'] {
  return CLASS_OF[reason];
}

/**
 * How many repetitions the limits of the protocol let into the test: its cap, its fixed count, its duration.
 *
 * @param raises - the attempted repetitions in order [s]
 * @param parameters - of the protocol [-]
 * @returns the number, and the limit that was reached; no more than there are repetitions [-]
 *
 * Source: definition
 */
export function protocolLimit(
  raises: readonly RaiseTimes[],
  parameters: ProtocolParameters,
): { readonly count: number; readonly rule: 'repetition-cap' | 'fixed-count' | 'duration' | undefined } {
  const { repetitionCap, fixedCount, duration } = parameters;
  let count = raises.length;
  let rule: 'repetition-cap' | 'fixed-count' | 'duration' | undefined;
  if (duration.value !== null && raises.length > 0) {
    const untilS = (raises[0].startS ?? raises[0].topS) + duration.value;
    const within = raises.filter((raise) => raise.topS <= untilS).length;
    if (within < count) {
      count = within;
      rule = 'duration';
    }
  }
  if (fixedCount.value !== null && fixedCount.value <= count) {
    count = fixedCount.value;
    rule = 'fixed-count';
  }
  if (repetitionCap.value !== null && repetitionCap.value <= count) {
    count = repetitionCap.value;
    rule = 'repetition-cap';
  }
  return { count, rule };
}

/**
 * Where the test ended, by the first of the rules that a trace can show, and what kind of result that makes it.
 *
 * @param raises - the attempted repetitions in order [s]
 * @param parameters - of the protocol [-]
 * @param faults - end by faults in a row; undefined when there was none [-]
 * @param reasonGiven - why the test ended, as the tester recorded it [-]
 * @returns rule, place and class; the class is unknown when nobody said why the test ended [-]
 *
 * Source: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188 (end rules); classes: common practice, no source
 */
export function testEnd(
  raises: readonly RaiseTimes[],
  parameters: ProtocolParameters,
  faults: FaultEnd | undefined,
  reasonGiven: EndReason | undefined,
): TestEnd {
  const limit = protocolLimit(raises, parameters);
  const byFaults = faults !== undefined && faults.index + 1 <= limit.count;
  const atRepetition = byFaults ? faults.index + 1 : limit.count;
  const rule = byFaults ? 'consecutive-faults' : (limit.rule ?? 'last-repetition');
  const limited =
    rule === 'repetition-cap' ? 'censored' : rule === 'fixed-count' || rule === 'duration' ? 'probe' : 'unknown';
  const last = atRepetition > 0 ? raises[atRepetition - 1] : undefined;
  return {
    rule,
    kind: byFaults ? faults.kind : null,
    atRepetition,
    atS: last === undefined ? null : (last.endS ?? last.topS),
    reasonGiven: reasonGiven ?? null,
    class: reasonGiven === undefined ? limited : endClass(reasonGiven),
  };
}
