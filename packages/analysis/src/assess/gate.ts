import type { Detection } from '../raises/detection.ts';
import { overlapS } from '../signal/intervals.ts';
import type { Side } from '../trace.ts';
import type { Gate, GateReason } from './report.ts';
import type { JudgingSettings } from './settings.ts';

/** Issues that make a set doubtful even where their place does not say so. */
const DOUBTFUL = new Set([
  'sensor-moved',
  'saturated',
  'low-rate',
  'flat',
  'implausible-size',
  'upside-down',
  'orientation',
]);

/**
 * Whether a trial may be interpreted at all: repetitions were found, the signal holds, few samples are lost, and the side
 * is known.
 *
 * @param detection - the set with its issues [-]
 * @param side - which side was tested; undefined when not given [-]
 * @param settings - largest share of the set that may be lost [-]
 * @returns the verdict with every reason against a plain yes [-]
 *
 * Source: common practice, no source
 */
export function gateOf(detection: Detection, side: Side | undefined, settings: JudgingSettings): Gate {
  const reasons: GateReason[] = [];
  const { raises, issues, motion } = detection;
  if (raises.length === 0) reasons.push('no-repetition');
  if (issues.some((issue) => issue.severity === 'invalid')) reasons.push('invalid-signal');
  if (issues.some((issue) => issue.severity === 'warning' && DOUBTFUL.has(issue.code))) reasons.push('doubtful-signal');
  if (raises.length > 0) {
    const set = { fromS: raises[0].startS, toS: raises[raises.length - 1].endS };
    const lostS = motion.gaps.reduce((sum, gap) => sum + overlapS(gap, set), 0);
    if (lostS > settings.gapShareMost * (set.toS - set.fromS)) reasons.push('gaps');
  }
  if (side === undefined) reasons.push('side-unknown');
  const usable = reasons.includes('invalid-signal') ? 'no' : reasons.length > 0 ? 'cannot_tell' : 'yes';
  return { usable, reasons };
}
