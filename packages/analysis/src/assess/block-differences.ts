import { BlockCounter } from '../raises/block-counter.ts';
import type { ProvisionalRaise } from '../raises/block-machine.ts';
import type { BlockCounterSettings } from '../raises/block-settings.ts';
import { counterInput } from '../raises/block-trace.ts';
import type { Raise } from '../raises/detection.ts';
import type { SensedPlacement, Trace } from '../trace.ts';
import type { BlockDifference } from './report.ts';

/**
 * Repetitions as they are counted while samples arrive, from the whole recording at once; any split gives the same.
 *
 * @param trace - the recording [SI]
 * @param placement - where the sensor sat [-]
 * @param heelLeverM - lever of the heel; undefined when not given [m]
 * @param settings - of the counter [-]
 * @returns the provisional repetitions in time order [s, m]
 * @throws {@link InputError} `missing-channel` when the recording lacks the channel; `not-finite`, `not-increasing`, `length-mismatch` for a trace that breaks its contract
 *
 * Source: ours
 */
export function provisionalRaises(
  trace: Trace,
  placement: SensedPlacement,
  heelLeverM: number | undefined,
  settings: BlockCounterSettings,
): ProvisionalRaise[] {
  const counter = new BlockCounter(placement, { settings, ...(heelLeverM === undefined ? {} : { heelLeverM }) });
  return [...counter.push(counterInput(trace, placement)), ...counter.finish()];
}

/**
 * Every difference between the repetitions of the final pass and those counted while samples arrived. Two are the same
 * repetition when the top of one lies within the other and none is nearer.
 *
 * @param raises - of the final pass, in time order [s]
 * @param provisional - of the block pass, in time order [s]
 * @param topMovedS - tops that differ by more are listed, >= 0 [s]
 * @returns the differences in time order; empty when there is none [s]
 *
 * Source: ours
 */
export function blockDifferences(
  raises: readonly Raise[],
  provisional: readonly ProvisionalRaise[],
  topMovedS: number,
): BlockDifference[] {
  const taken = new Set<number>();
  const differences: { readonly atS: number; readonly difference: BlockDifference }[] = [];
  raises.forEach((raise, i) => {
    let nearest = -1;
    provisional.forEach((one, k) => {
      if (taken.has(k)) return;
      const same =
        (one.topS >= raise.startS && one.topS <= raise.endS) || (raise.topS >= one.startS && raise.topS <= one.endS);
      const nearer = nearest < 0 || Math.abs(one.topS - raise.topS) < Math.abs(provisional[nearest].topS - raise.topS);
      if (same && nearer) nearest = k;
    });
    const finalTopS = raise.topS;
    if (nearest < 0) {
      const difference = { kind: 'only-final', repetition: i + 1, finalTopS, blockTopS: null } as const;
      differences.push({ atS: finalTopS, difference });
      return;
    }
    taken.add(nearest);
    const blockTopS = provisional[nearest].topS;
    if (Math.abs(blockTopS - finalTopS) > topMovedS) {
      const difference = { kind: 'top-moved', repetition: i + 1, finalTopS, blockTopS } as const;
      differences.push({ atS: finalTopS, difference });
    }
  });
  provisional.forEach((one, k) => {
    if (taken.has(k)) return;
    const difference = { kind: 'only-block', repetition: null, finalTopS: null, blockTopS: one.topS } as const;
    differences.push({ atS: one.topS, difference });
  });
  return differences.sort((a, b) => a.atS - b.atS).map((one) => one.difference);
}
