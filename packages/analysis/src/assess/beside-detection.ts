import type { Issue } from '../issue.ts';
import type { ProvisionalRaise } from '../raises/block-machine.ts';
import type { BlockCounterSettings } from '../raises/block-settings.ts';
import type { SensedPlacement, Trace } from '../trace.ts';
import { provisionalRaises } from './block-differences.ts';
import type { SignalLimits } from './settings.ts';
import { signalIssues } from './signal-issues.ts';

/** A recording, and all that {@link findBeside} has to know: plain data. */
export interface BesideWork {
  readonly trace: Trace;
  readonly placement: SensedPlacement;
  /** undefined when not given [m] */
  readonly heelLeverM: number | undefined;
  readonly block: BlockCounterSettings;
  readonly gravityMps2: number;
  readonly limits: SignalLimits;
}

/** What a recording shows that the detection of its repetitions does not need, and that does not need the detection. */
export interface BesideFindings {
  readonly ofSignal: readonly Issue[];
  readonly provisional: readonly ProvisionalRaise[];
}

/** Has the work begun, wherever that is; what it gives waits for the findings. */
export type Beside = (work: BesideWork) => () => BesideFindings;

/**
 * Issues of the signal, and repetitions as they are counted while samples arrive.
 *
 * @param work - recording, placement and settings [SI]
 * @returns both, in time order [s, m]
 * @throws {@link InputError} as `assess` does
 *
 * Source: ours
 */
export function findBeside({ trace, placement, heelLeverM, block, gravityMps2, limits }: BesideWork): BesideFindings {
  return {
    ofSignal: signalIssues(trace, placement, gravityMps2, limits),
    provisional: provisionalRaises(trace, placement, heelLeverM, block),
  };
}

/**
 * The work where the detection is, after it.
 *
 * @param work - recording, placement and settings [SI]
 * @returns what does the work [-]
 *
 * Source: definition
 */
export const afterwards: Beside = (work) => () => findBeside(work);
