import type { Issue } from '../issue.ts';
import type { PullGateReason, PullReport } from './pull-report.ts';

/** Issues that make the efforts doubtful. */
const DOUBTFUL = new Set(['saturated', 'low-rate', 'implausible-size', 'polarity-unclear']);

/** What the gate of an isometric test looks at. */
export interface PullGateSubject {
  readonly found: number;
  readonly accepted: number;
  /** accepted efforts that the protocol asks for; null for any number */
  readonly leastTrials: number | null;
  readonly issues: readonly Issue[];
  readonly sideKnown: boolean;
}

/**
 * Whether an isometric test may be interpreted at all: enough efforts count, the signal holds, and the side is known.
 *
 * @param subject - see {@link PullGateSubject} [-]
 * @returns yes, or cannot tell with every reason against a plain yes [-]
 *
 * Source: common practice, no source
 */
export function pullGate(subject: PullGateSubject): PullReport['gate'] {
  const { found, accepted, leastTrials, issues, sideKnown } = subject;
  const few = accepted > 0 && leastTrials !== null && accepted < leastTrials;
  const held: readonly (readonly [PullGateReason, boolean])[] = [
    ['no-effort', found === 0],
    ['no-accepted-effort', found > 0 && accepted === 0],
    ['too-few-accepted', few],
    ['doubtful-signal', issues.some(({ code, severity }) => severity === 'warning' && DOUBTFUL.has(code))],
    ['side-unknown', !sideKnown],
  ];
  const reasons = held.filter(([, holds]) => holds).map(([reason]) => reason);
  return { usable: reasons.length === 0 ? 'yes' : 'cannot_tell', reasons };
}
